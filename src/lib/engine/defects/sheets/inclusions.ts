import type { DefectSheet } from '../sheet';

/** Things in the film that do not belong there. */
export const inclusionDefects = {
	dirt: {
		look: {
			en: 'Single nibs, 0.1 to 2 mm, and curved threads of lint, anywhere.',
			es: 'Granos sueltos, de 0.1 a 2 mm, e hilos curvos de pelusa, en cualquier parte.'
		},
		lookAlike: {
			en: 'Grit is hard and scratches glass; gel is clear and the colour of the coating; dust and fibre are soft and snap off.',
			es: 'El abrasivo es duro y raya el vidrio; el gel es claro y del color de la pintura; polvo y fibra son blandos y se quiebran.'
		},
		now: {
			en: 'A few: lift them wet with a needle, or denib after cure. Many: stop and look at filters, clothing and blow-off.',
			es: 'Pocos: sáquelos húmedos con aguja, o quítelos lijando tras curar. Muchos: pare y revise filtros, ropa y sopleteo.'
		}
	},
	'gel-bits': {
		look: {
			en: 'Clear lumps the colour of the coating, 0.2 to 1 mm.',
			es: 'Grumos claros del color del recubrimiento, de 0.2 a 1 mm.'
		},
		lookAlike: {
			en: 'Crush one: gel is springy and dissolves slowly; dirt and grit are not.',
			es: 'Aplaste uno: el gel es elástico y se disuelve despacio; la suciedad y el abrasivo no.'
		},
		now: {
			en: 'Throw the mix away, clean the gun at once, mix fresh and strain it.',
			es: 'Deseche la mezcla, limpie la pistola enseguida, mezcle de nuevo y cuele.'
		}
	},
	'grit-inclusion': {
		look: {
			en: 'A hard black, white or sparkling grain with a thin or bare halo.',
			es: 'Un grano duro negro, blanco o brillante con halo delgado o desnudo.'
		},
		lookAlike: {
			en: 'It scratches glass and a nail does not break it; dust does neither. A magnet sorts steel grit from oxide.',
			es: 'Raya el vidrio y la uña no lo rompe; el polvo ni lo uno ni lo otro. Un imán separa la granalla de acero del óxido.'
		},
		now: {
			en: 'Dig it out, blast and coat the place again. Blow and vacuum the holes of the parts still waiting.',
			es: 'Sáquelo, granalle y recubra el sitio. Sople y aspire los agujeros de las piezas que esperan.'
		}
	},
	'cross-contamination': {
		look: {
			en: 'Streaks or specks of another colour, local craters, or soft islands.',
			es: 'Vetas o motas de otro color, cráteres locales o islas blandas.'
		},
		lookAlike: {
			en: 'Under-stirred pigment swirls through all of the film; this begins at one part and fades as the gun clears itself. Rust specks on aluminium or stainless are steel from shared media.',
			es: 'El pigmento mal agitado se ve en toda la película; esto empieza en una pieza y se va al limpiarse la pistola. Motas de óxido en aluminio o inoxidable son acero de abrasivo compartido.'
		},
		now: {
			en: 'Set aside everything since the last part known good, then clean gun, line and cups.',
			es: 'Aparte todo desde la última pieza buena conocida; luego limpie pistola, línea y tazas.'
		}
	},
	fingerprint: {
		look: {
			en: 'Skin ridges or a dull oval of 10 to 20 mm, sometimes seen only after the bake.',
			es: 'Crestas de piel o un óvalo opaco de 10 a 20 mm, a veces visible solo tras el horno.'
		},
		lookAlike: {
			en: 'Ridges are a bare hand; a smooth oval is glove powder or a press on hot film.',
			es: 'Las crestas son mano desnuda; un óvalo liso es polvo de guante o presión sobre película caliente.'
		},
		now: {
			en: 'Strip the place and start that part again from degreasing.',
			es: 'Decape el sitio y empiece esa pieza otra vez desde el desengrase.'
		}
	}
} satisfies Record<string, DefectSheet>;

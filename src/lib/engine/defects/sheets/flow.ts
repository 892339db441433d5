import type { DefectSheet } from '../sheet';

/** Films that levelled badly, ran, or came out uneven from pass to pass. */
export const flowDefects = {
	'orange-peel': {
		look: {
			en: 'A closed skin of small soft bumps, 0.5 to 3 mm apart, over the whole face.',
			es: 'Una piel cerrada de bultitos suaves, cada 0.5 a 3 mm, en toda la cara.'
		},
		lookAlike: {
			en: 'Dry spray feels like sandpaper; this is smooth under the nail and still shines.',
			es: 'La aplicación seca se siente como lija; esto es liso a la uña y todavía brilla.'
		},
		now: {
			en: 'Still wet: one even wet pass. Cured: sand flat and recoat inside the recoat window.',
			es: 'Aún húmedo: una pasada húmeda pareja. Curado: lije plano y recubra dentro de la ventana de repintado.'
		}
	},
	runs: {
		look: {
			en: 'A tear or curtain hanging downward, 2 to 30 mm, with a thick rounded lip.',
			es: 'Una lágrima o cortina que cuelga hacia abajo, de 2 a 30 mm, con labio grueso y redondo.'
		},
		lookAlike: {
			en: 'A cold run shows only after flash-off or oven; this one is there within a minute. A fat edge follows the outline, a run follows gravity.',
			es: 'El escurrido en frío aparece tras la evaporación o el horno; este está al minuto. El borde grueso sigue el contorno, el escurrido sigue la gravedad.'
		},
		now: {
			en: 'Wet: wipe the whole face clean and spray it again; never brush it out. Cured: flat it and recoat.',
			es: 'Húmedo: limpie toda la cara y aplique otra vez; no lo extienda con brocha. Curado: lije plano y recubra.'
		}
	},
	'cold-run': {
		look: {
			en: 'A hardened thick lip that nobody saw at the gun, found after flash-off or oven.',
			es: 'Un labio grueso endurecido que nadie vio al aplicar, hallado tras la evaporación o el horno.'
		},
		lookAlike: {
			en: 'An ordinary run is seen at the gun. Ask who looked before the oven, and how cold part and coating were.',
			es: 'El escurrido común se ve al aplicar. Pregunte quién miró antes del horno y qué tan frías estaban pieza y pintura.'
		},
		now: {
			en: 'Flat it after cure and recoat. Check the rest of the load for the same lip.',
			es: 'Lije plano después de curar y recubra. Revise en el resto de la carga el mismo labio.'
		}
	},
	'dry-spray': {
		look: {
			en: 'A rough, sandy, dull band, often at far edges and where passes meet.',
			es: 'Una franja áspera, arenosa y opaca, a menudo en bordes lejanos y donde se juntan las pasadas.'
		},
		lookAlike: {
			en: 'Dirt stands in single nibs; this is an even grain and a dry finger takes powder off. Low gloss alone is smooth.',
			es: 'La suciedad son granos sueltos; esto es un grano parejo y el dedo seco saca polvo. El brillo bajo solo es liso.'
		},
		now: {
			en: 'Still wet: one even wet pass may melt it in. Set: scuff lightly, wipe, recoat inside the window.',
			es: 'Aún húmedo: una pasada húmeda pareja puede fundirlo. Seco: lije suave, limpie y recubra dentro de la ventana.'
		}
	},
	'fat-edges': {
		look: {
			en: 'A raised, darker bead 0.5 to 3 mm wide round the outline, like a picture frame.',
			es: 'Un cordón elevado y más oscuro, de 0.5 a 3 mm, alrededor del contorno, como un marco.'
		},
		lookAlike: {
			en: 'A run hangs from one edge only; this goes round all of them, horizontal ones too.',
			es: 'El escurrido cuelga de un solo borde; esto rodea todos, también los horizontales.'
		},
		now: {
			en: 'Wet: wipe and spray again, releasing the trigger past the edge. Cured: flat with fine paper.',
			es: 'Húmedo: limpie y aplique de nuevo, soltando el gatillo pasado el borde. Curado: lije con papel fino.'
		}
	},
	'thin-edges': {
		look: {
			en: 'A line of bare or see-through metal up to 1 mm wide along sharp edges; the film has drawn back.',
			es: 'Una línea de metal desnudo o transparente de hasta 1 mm en los filos; la película se retiró.'
		},
		lookAlike: {
			en: 'A rubbed-through spot is local; this runs evenly along every sharp edge.',
			es: 'Una zona gastada por roce es local; esto corre parejo por todos los filos.'
		},
		now: {
			en: 'Wet: a light pass on the edges. Cured: ask the customer whether edges may be broken, then scuff and recoat.',
			es: 'Húmedo: una pasada ligera en los bordes. Curado: pregunte al cliente si se pueden matar los filos; luego lije y recubra.'
		}
	},
	holiday: {
		look: {
			en: 'A bare or see-through patch.',
			es: 'Un parche desnudo o transparente.'
		},
		lookAlike: {
			en: 'A straight one is a missed overlap; one on high spots or edges was rubbed or sanded through; a lattice is a cross-cut on the part.',
			es: 'Si es recto, faltó traslape; si está en partes altas o bordes, se gastó por roce o lijado; si es retícula, es un corte cruzado en la pieza.'
		},
		now: {
			en: 'Before cure: spray the place and blend it. After cure: scuff and recoat the whole face. Turn the other parts and look at their back side.',
			es: 'Antes de curar: aplique en el sitio y difumine. Después: lije y recubra toda la cara. Gire las demás piezas y mire su reverso.'
		}
	},
	mottling: {
		look: {
			en: 'Cloudy patches, 5 to 50 mm, darker and lighter or shiny and dull, in no order.',
			es: 'Parches nublados de 5 a 50 mm, más oscuros y claros o brillantes y opacos, sin orden.'
		},
		lookAlike: {
			en: 'Banding has a stripe direction; this has none. A milky blush clears with gentle heat; this does not.',
			es: 'Las bandas tienen dirección; esto no. Un velo lechoso se quita con calor suave; esto no.'
		},
		now: {
			en: 'Wet: one light even cross-coat from a re-stirred cup. Cured: hold, look at the bottom of the can.',
			es: 'Húmedo: una mano cruzada ligera y pareja con la taza reagitada. Curado: retenga y mire el fondo de la lata.'
		}
	},
	banding: {
		look: {
			en: 'Parallel stripes as far apart as the passes.',
			es: 'Franjas paralelas con la separación de las pasadas.'
		},
		lookAlike: {
			en: 'Mottling has no direction. Spray a pattern on paper: a heavy middle or a split fan shows there too.',
			es: 'El moteado no tiene dirección. Aplique un patrón en papel: un centro cargado o un abanico partido también se ve ahí.'
		},
		now: {
			en: 'Wet: cross-coat at right angles. Then stop and test the pattern before the next part.',
			es: 'Húmedo: mano cruzada en ángulo recto. Luego pare y pruebe el patrón antes de la siguiente pieza.'
		}
	},
	wrinkling: {
		look: {
			en: 'A fine skin like a dried prune, over a patch or the whole face.',
			es: 'Una piel fina como de ciruela seca, en un parche o en toda la cara.'
		},
		lookAlike: {
			en: 'Orange peel is bumps in a tight film; here the skin itself is folded and loose from what is under it.',
			es: 'La piel de naranja son bultos en película firme; aquí la piel misma está plegada y suelta de lo de abajo.'
		},
		now: {
			en: 'Strip it: nothing laid over a folded film holds. Write down the minutes between the coats first.',
			es: 'Decape: nada aguanta sobre una película plegada. Antes anote los minutos entre manos.'
		}
	}
} satisfies Record<string, DefectSheet>;

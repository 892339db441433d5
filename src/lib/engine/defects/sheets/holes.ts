import type { DefectSheet } from '../sheet';

/** Pits, pores and blisters, and drops that the air line throws. */
export const holeDefects = {
	fisheyes: {
		look: {
			en: 'Round pits, 0.5 to 5 mm, with a raised rim and often a bare centre, in random clusters; there within seconds.',
			es: 'Hoyos redondos, de 0.5 a 5 mm, con borde levantado y a menudo centro desnudo, en grupos al azar; aparecen en segundos.'
		},
		lookAlike: {
			en: 'A pinhole is deeper than wide and has no rim; a solvent pop has a burst dome. A UV lamp or a drop of solvent on bare metal shows the oil.',
			es: 'El poro de aguja es más hondo que ancho y sin borde; el hervido tiene un domo reventado. Una lámpara UV o una gota de solvente en metal desnudo muestra el aceite.'
		},
		now: {
			en: 'Stop the batch. Take the film off rather than bury the pits, then find the oil or silicone: blotter test first. No additive on top.',
			es: 'Pare el lote. Quite la película en vez de tapar los hoyos, y busque el aceite o la silicona: primero la prueba de secante. Nada de aditivos encima.'
		}
	},
	pinholes: {
		look: {
			en: 'Needle pricks, 0.05 to 0.3 mm, without a rim, down to the metal; often over pores or welds.',
			es: 'Pinchazos de aguja, de 0.05 a 0.3 mm, sin borde, hasta el metal; a menudo sobre poros o soldaduras.'
		},
		lookAlike: {
			en: 'Solvent pop leaves domes. Outgassing hits the same zone on every casting; these do not.',
			es: 'El hervido deja domos. La desgasificación sale en la misma zona de cada fundición; estos no.'
		},
		now: {
			en: 'Hold. Sand, bake out again if the part is porous, recoat in thinner coats with the full flash-off.',
			es: 'Retenga. Lije, desgasifique de nuevo si la pieza es porosa y recubra en manos más delgadas con la evaporación completa.'
		}
	},
	'solvent-pop': {
		look: {
			en: 'Tiny burst blisters, 0.2 to 1 mm, dense where the film is thick; found after the oven.',
			es: 'Ampollitas reventadas, de 0.2 a 1 mm, densas donde la película es gruesa; se ven tras el horno.'
		},
		lookAlike: {
			en: 'Gas from the part blisters at pores, thick film or thin; this sits only where the film is thick. Fisheyes are wider and there before the oven.',
			es: 'El gas de la pieza ampolla en los poros, con película gruesa o delgada; esto solo donde es gruesa. Los ojos de pez son más anchos y están antes del horno.'
		},
		now: {
			en: 'Sand to sound film, recoat thinner, keep the flash-off. Check the parts that hung in the same load.',
			es: 'Lije hasta película sana, recubra más delgado y respete la evaporación. Revise las piezas de la misma carga.'
		}
	},
	'outgassing-blisters': {
		look: {
			en: 'Domes or little volcanoes, 0.5 to 4 mm, at the same places on every part: pores, welds, laps.',
			es: 'Domos o pequeños volcanes, de 0.5 a 4 mm, en los mismos lugares de cada pieza: poros, soldaduras, traslapes.'
		},
		lookAlike: {
			en: 'Bake a bare part and a coated sheet witness together: sheet clean and part blistered means gas out of the part, not the film.',
			es: 'Hornee juntos una pieza desnuda y un testigo de lámina recubierto: lámina limpia y pieza ampollada es gas de la pieza, no de la película.'
		},
		now: {
			en: 'Hold. Strip the spots, bake out longer, then coat; a slower, cooler cure only where the sheet prints one.',
			es: 'Retenga. Decape los sitios, desgasifique más tiempo y recubra; un curado más lento y frío solo si la hoja lo indica.'
		}
	},
	'air-line-spits': {
		look: {
			en: 'Single clear or oily drops, 1 to 5 mm, with a splash ring, in line with the path of the gun.',
			es: 'Gotas sueltas, claras o aceitosas, de 1 a 5 mm, con anillo de salpicadura, en línea con el paso de la pistola.'
		},
		lookAlike: {
			en: 'Fisheyes lie at random; these follow a stroke. Blow on white paper without coating: it spits there too.',
			es: 'Los ojos de pez van al azar; estas siguen una pasada. Sople sobre papel blanco sin pintura: ahí también escupe.'
		},
		now: {
			en: 'Stop. Drain traps and hose, repeat the blotter test, and only then spray the next part.',
			es: 'Pare. Purgue trampas y manguera, repita la prueba de secante y solo entonces aplique la siguiente pieza.'
		}
	}
} satisfies Record<string, DefectSheet>;

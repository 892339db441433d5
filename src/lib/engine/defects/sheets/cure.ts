import type { DefectSheet } from '../sheet';

/** Films that cured in the wrong climate, too little or too far. */
export const cureDefects = {
	blushing: {
		look: {
			en: 'Milky haze in patches, minutes after spraying.',
			es: 'Velo lechoso en parches, minutos después de aplicar.'
		},
		lookAlike: {
			en: 'Amine bloom is greasy and wipes off; blush is in the film and may clear with gentle heat.',
			es: 'La exudación de amina es grasosa y se limpia; el velo está en la película y puede irse con calor suave.'
		},
		now: {
			en: 'Stop. Warm, dry air and time; what has cured in is sanded and recoated. Read dew point and part before the next one.',
			es: 'Pare. Aire tibio y seco y tiempo; lo que ya curó se lija y recubre. Lea punto de rocío y pieza antes de seguir.'
		}
	},
	'amine-bloom': {
		look: {
			en: 'A greasy or sticky veil on an epoxy film.',
			es: 'Un velo grasoso o pegajoso sobre una película epoxi.'
		},
		lookAlike: {
			en: 'A finger leaves a clean track and water takes it off; blush and under-cure stay.',
			es: 'El dedo deja una huella limpia y el agua lo quita; el velo por humedad y la falta de curado se quedan.'
		},
		now: {
			en: 'Wash with warm water, dry and scuff before anything goes over it.',
			es: 'Lave con agua tibia, seque y lije antes de poner algo encima.'
		}
	},
	'gloss-off': {
		look: {
			en: 'The whole face evenly too shiny or too dull, and smooth.',
			es: 'Toda la cara pareja, demasiado brillante u opaca, y lisa.'
		},
		lookAlike: {
			en: 'Dry spray is rough under the nail; this is not. Eyes adapt, so put the gloss meter on the part and on the master.',
			es: 'La aplicación seca es áspera a la uña; esto no. El ojo se acostumbra: ponga el brillómetro en la pieza y en el patrón.'
		},
		now: {
			en: 'Hold. Measure the witness, look at the stirring record and rub for cure before anything is recoated.',
			es: 'Retenga. Mida el testigo, mire el registro de agitado y frote para ver el curado antes de recubrir.'
		}
	},
	'colour-shift': {
		look: {
			en: 'The whole part tinted; brown first on thin sections.',
			es: 'Toda la pieza con otro tono; café primero en secciones delgadas.'
		},
		lookAlike: {
			en: 'Lay it beside the master under the same lamp: two colours can match under one light only. A film too thin lets the metal through.',
			es: 'Póngala junto al patrón bajo la misma lámpara: dos colores pueden igualar solo con una luz. Una película muy delgada deja ver el metal.'
		},
		now: {
			en: 'Hold the load and pull the oven chart.',
			es: 'Retenga la carga y saque el registro del horno.'
		}
	},
	'soft-film': {
		look: {
			en: 'A nail dents it, the pencil reads low, and a solvent cloth takes colour in a few rubs.',
			es: 'La uña la marca, el lápiz sale bajo y el trapo con solvente saca color en pocos frotes.'
		},
		lookAlike: {
			en: 'A film too thick is soft only where it is thick; one that did not cure is soft everywhere.',
			es: 'Una película muy gruesa es blanda solo donde es gruesa; una sin curar es blanda en todas partes.'
		},
		now: {
			en: 'Hold the load. Bake again only where the data sheet allows it; hardener on top cures nothing.',
			es: 'Retenga la carga. Hornee otra vez solo si la hoja lo permite; endurecedor encima no cura nada.'
		}
	},
	'over-cure': {
		look: {
			en: 'Fine cracks, a dark tone, chips along the edge of a cut.',
			es: 'Grietas finas, tono oscuro, astillas al borde de un corte.'
		},
		lookAlike: {
			en: 'Strip one spot: if the plastic under it is whole, only the film has cracked. Cracks like dried mud say too thick.',
			es: 'Decape un sitio: si el plástico debajo está entero, solo se agrietó la película. Grietas como de barro seco indican exceso de espesor.'
		},
		now: {
			en: 'Strip; a brittle film does not come back. Check whether the part itself passed its limit.',
			es: 'Decape; una película quebradiza no se recupera. Revise si la pieza misma pasó su límite.'
		}
	}
} satisfies Record<string, DefectSheet>;

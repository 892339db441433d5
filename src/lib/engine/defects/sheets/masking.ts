import type { DefectSheet } from '../sheet';

/** Traces of tape and rack, film where it does not fit, and lines that show through. */
export const maskingDefects = {
	'mask-bleed': {
		look: {
			en: 'Feathered colour under the tape edge, 0.2 to 3 mm.',
			es: 'Color difuminado bajo el borde de la cinta, de 0.2 a 3 mm.'
		},
		lookAlike: {
			en: 'A torn edge stands up and is ragged; bleed lies flat and runs out thin.',
			es: 'El borde rasgado sobresale y es irregular; la filtración es plana y termina delgada.'
		},
		now: {
			en: 'Before cure: lift it off locally with a scraper or the solvent of the sheet. After cure: ask before scraping a fit face.',
			es: 'Antes de curar: quítelo localmente con rasqueta o el solvente de la hoja. Después: pregunte antes de raspar una cara de ajuste.'
		}
	},
	'mask-ridge': {
		look: {
			en: 'A step or saw-tooth at the mask line, or a stripe of glue.',
			es: 'Un escalón o dientes de sierra en la línea de la máscara, o una franja de pegamento.'
		},
		lookAlike: {
			en: 'Bleed has no step. Glue wipes off with the right solvent; film does not.',
			es: 'La filtración no tiene escalón. El pegamento sale con el solvente correcto; la película no.'
		},
		now: {
			en: 'Take the ridge down with fine paper. On the parts still masked: cut the bridge with a blade, peel warm and low.',
			es: 'Rebaje el reborde con papel fino. En las aún enmascaradas: marque el puente con cuchilla y despegue tibio y al ras.'
		}
	},
	'over-thick': {
		look: {
			en: 'The part will not go together, a thread gauge binds, inside corners look dark and full.',
			es: 'La pieza no ensambla, el calibre de rosca se traba, las esquinas interiores se ven oscuras y llenas.'
		},
		lookAlike: {
			en: 'A burr or a forgotten mask also binds: measure the film beside the fit first.',
			es: 'Una rebaba o una máscara olvidada también traba: mida primero la película junto al ajuste.'
		},
		now: {
			en: 'Hold and measure. Ask the customer whether it may stay; else strip.',
			es: 'Retenga y mida. Pregunte al cliente si puede quedar; si no, decape.'
		}
	},
	'rack-mark': {
		look: {
			en: 'A bare dot, the shadow of a hook, or the print of a neighbouring part.',
			es: 'Un punto desnudo, la sombra de un gancho o la marca de la pieza vecina.'
		},
		lookAlike: {
			en: 'Hang the part again: a hook mark meets the hook. A missed patch does not.',
			es: 'Cuelgue la pieza otra vez: la marca de gancho coincide con el gancho. Una zona sin cubrir no.'
		},
		now: {
			en: 'Touch up only where the job allows it. Agree the hanging point with the customer for the rest.',
			es: 'Retoque solo si el trabajo lo permite. Acuerde con el cliente el punto de colgado para el resto.'
		}
	},
	'print-through': {
		look: {
			en: 'Regular scratches or the weave of the cloth seen through the film.',
			es: 'Rayas regulares o el tejido de la tela que se ven a través de la película.'
		},
		lookAlike: {
			en: 'Banding is as wide as a pass; these lines are as fine as the paper or the cloth.',
			es: 'Las bandas son tan anchas como una pasada; estas líneas son tan finas como la lija o la tela.'
		},
		now: {
			en: 'Sand fine and coat again where the film window leaves room; else report it.',
			es: 'Lije fino y recubra si la ventana de película lo permite; si no, repórtelo.'
		}
	}
} satisfies Record<string, DefectSheet>;

import type { DefectSheet } from '../sheet';

/** Damage to the part itself, which no recoat repairs. */
export const partDamage = {
	'distorted-part': {
		look: {
			en: 'Bowed, sunken, holes out of place, or soft to the touch.',
			es: 'Arqueada, hundida, con agujeros movidos o blanda al tacto.'
		},
		lookAlike: {
			en: 'Compare with an uncoated piece: it may have come in bent. A bend toward the hook says it hung by a weak point when hot.',
			es: 'Compare con una pieza sin recubrir: pudo llegar torcida. Si dobla hacia el gancho, colgaba caliente de un punto débil.'
		},
		now: {
			en: 'Stop the load, set the parts aside and tell the customer. Do not straighten them.',
			es: 'Pare la carga, aparte las piezas y avise al cliente. No las enderece.'
		}
	},
	'solvent-crazing': {
		look: {
			en: 'Silvery hairline cracks in the plastic itself, at corners, gates and inserts, minutes to days later.',
			es: 'Grietas finas plateadas en el plástico mismo, en esquinas, entradas de inyección e insertos, minutos a días después.'
		},
		lookAlike: {
			en: 'Strip one spot: cracks that stay are in the plastic, cracks that go were in the film.',
			es: 'Decape un sitio: las grietas que quedan son del plástico, las que se van eran de la película.'
		},
		now: {
			en: 'Keep that solvent off the rest, scrap or report the cracked ones. They can break later.',
			es: 'No use ese solvente en las demás; descarte o reporte las agrietadas. Pueden romperse después.'
		}
	},
	'anodise-crazing': {
		look: {
			en: 'A spider’s web of cracks under a clear or thin film, after the oven; the film is sound.',
			es: 'Una telaraña de grietas bajo una película clara o delgada, tras el horno; la película está sana.'
		},
		lookAlike: {
			en: 'Strip one spot: the web stays in the anodising.',
			es: 'Decape un sitio: la telaraña queda en el anodizado.'
		},
		now: {
			en: 'Report it; recoating does not repair it. Ask before the next anodised part meets the oven.',
			es: 'Repórtelo; recubrir no lo repara. Pregunte antes de meter al horno la siguiente pieza anodizada.'
		}
	}
} satisfies Record<string, DefectSheet>;

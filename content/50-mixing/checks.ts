import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'which-lot',
		rule: 'hardener-sound',
		kind: 'reason',
		question: {
			en: 'The hardener is in date, but the can is bulged and there are crystals under the lid. What does that tell you?',
			es: 'El endurecedor está en fecha, pero la lata está abombada y hay cristales bajo la tapa. ¿Qué le dice eso?'
		},
		options: {
			cold: {
				en: 'It stood too cold; it clears up when it is warm.',
				es: 'Estuvo muy frío; se aclara al entibiarse.'
			},
			filter: {
				en: 'Some of it has dried; through a strainer it is as good as new.',
				es: 'Se secó un poco; colado queda como nuevo.'
			},
			water: {
				en: 'Water got in and has used up hardener: set it aside, unopened.',
				es: 'Le entró agua y se gastó endurecedor: apartarlo sin abrir.'
			}
		},
		right: 'water',
		because: {
			en: 'Moisture reacts with the hardener: crystals are what is left of it, the bulge is the gas. What still pours cures too weakly, and no strainer puts back what has reacted.',
			es: 'La humedad reacciona con el endurecedor: los cristales son lo que queda y el abombado es el gas. Lo que aún se vierte cura débil, y ningún colador devuelve lo que ya reaccionó.'
		}
	},
	{ id: 'batch', rule: 'batch-covers-the-job', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'hardener-on-scale', rule: 'hardener-by-weight', kind: 'field', example: 'steel-plates' },
	{ id: 'hot-day', rule: 'use-within-pot-life', kind: 'field', example: 'hot-day' },
	{ id: 'thinner', rule: 'thinner-share', kind: 'field', example: 'steel-plates' },
	{
		id: 'left-over',
		rule: 'left-over-discarded',
		kind: 'reason',
		question: {
			en: 'A two-part mix has thickened in the cup. A splash of thinner makes it flow like new. Why is it still wrong?',
			es: 'Una mezcla de dos partes espesó en el vaso. Un chorrito de diluyente la deja fluida como nueva. ¿Por qué sigue mal?'
		},
		options: {
			reacted: {
				en: 'It has already reacted in the cup; on the part it can no longer link up and hold.',
				es: 'Ya reaccionó en el vaso; en la pieza ya no puede reticular ni agarrarse.'
			},
			colour: {
				en: 'The thinner makes the colour paler.',
				es: 'El diluyente aclara el color.'
			},
			share: {
				en: 'It is right as long as the thinner stays under the sheet’s limit.',
				es: 'Está bien mientras el diluyente no pase del límite de la hoja.'
			}
		},
		right: 'reacted',
		because: {
			en: 'Getting thick is the reaction itself. Thinner only spreads the reacted resin out; the gel bits and the poor hold stay.',
			es: 'Espesar es la reacción misma. El diluyente solo separa la resina que ya reaccionó; los grumos y la mala adhesión se quedan.'
		}
	}
] satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'past-its-date', rule: 'lot-in-date', kind: 'field', example: 'expired-lot' },
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
	{ id: 'cold-store', rule: 'cold-can-warms-up', kind: 'field', example: 'cold-can' },
	{ id: 'nothing-wrong', rule: 'sound-lot-used', kind: 'field', example: 'steel-plates' },
	{ id: 'how-long', rule: 'agitate-settled-can', kind: 'field', example: 'aluminium-brackets' }
] satisfies readonly LessonCheck[];

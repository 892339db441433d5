import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'lowest-limit', rule: 'part-limit-lowest', kind: 'field', example: 'knob-levers' },
	{ id: 'clip-limit', rule: 'temper-margin', kind: 'field', example: 'spring-clips' },
	{ id: 'too-hot', rule: 'cure-within-part-limit', kind: 'field', example: 'anodised-panels' },
	{
		id: 'shorter-time',
		rule: 'cure-within-part-limit',
		kind: 'reason',
		question: {
			en: 'The coolest cure on the sheet is hotter than the part may get. Why not cure at that heat for half the time?',
			es: 'El curado más frío de la hoja es más caliente de lo que aguanta la pieza. ¿Por qué no curar a esa temperatura la mitad del tiempo?'
		},
		options: {
			still: {
				en: 'the part still gets too hot, and the film stays soft as well',
				es: 'la pieza de todos modos se calienta de más, y encima la película queda blanda'
			},
			energy: { en: 'the oven needs more power for it', es: 'el horno gasta más energía' },
			ticket: {
				en: 'it is allowed, if the time is written on the ticket',
				es: 'sí se puede, si el tiempo queda escrito en la orden'
			}
		},
		right: 'still',
		because: {
			en: 'Half the time is half a cure, and the heat that harms the part is reached all the same. Ask for another coating or for taking the weak item out.',
			es: 'La mitad del tiempo es medio curado, y el calor que daña la pieza se alcanza igual. Pregunte por otro recubrimiento o por quitar lo que no aguanta.'
		}
	}
] as const satisfies readonly LessonCheck[];

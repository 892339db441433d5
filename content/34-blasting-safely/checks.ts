import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'torn-seal', rule: 'cabinet-sound-before-blasting', kind: 'field', example: 'torn-cabinet' },
	{
		id: 'fan-first',
		rule: 'cabinet-sound-before-blasting',
		kind: 'reason',
		question: {
			en: 'The last part is blasted. Why does the door stay shut for a while?',
			es: 'La última pieza está granallada. ¿Por qué la puerta queda cerrada un rato?'
		},
		options: {
			cool: { en: 'so that the part can cool down', es: 'para que la pieza se enfríe' },
			media: { en: 'so that the media can be used again', es: 'para que el abrasivo se pueda volver a usar' },
			dust: {
				en: 'so that the fan can draw the dust off before it comes out at you',
				es: 'para que el extractor se lleve el polvo antes de que le salga a usted'
			}
		},
		right: 'dust',
		because: {
			en: 'The finest dust hangs longest and goes deepest into the lungs. A door opened at once lets all of it into the room.',
			es: 'El polvo más fino es el que más flota y el que más hondo entra en los pulmones. Si abre de inmediato, todo sale al cuarto.'
		}
	},
	{
		id: 'sand',
		rule: 'no-silica-sand',
		kind: 'reason',
		question: {
			en: 'The media drum is empty. In the yard stands a bag of blasting sand, and one rusty part is left. What do you do?',
			es: 'El tambor de abrasivo está vacío. En el patio hay un saco de arena para chorro y falta una pieza oxidada. ¿Qué hace usted?'
		},
		options: {
			leave: {
				en: 'leave the sand, lock it away, tell the supervisor',
				es: 'dejar la arena, guardarla bajo llave y avisar al supervisor'
			},
			one: { en: 'use it for this one part, fan on', es: 'usarla solo para esta pieza, con extractor' },
			mask: { en: 'use it with a dust mask on', es: 'usarla con una mascarilla para polvo' }
		},
		right: 'leave',
		because: {
			en: 'Sand dust goes through leaks and past a dust mask, and the scars stay. One part is no reason for that.',
			es: 'El polvo de arena pasa por las fugas y por la mascarilla, y las cicatrices quedan. Una pieza no lo vale.'
		}
	},
	{ id: 'blasting-gear', rule: 'gear-for-blasting', kind: 'field', example: 'steel-plates' },
	{ id: 'blow-off', rule: 'blow-off-below-30-psi', kind: 'field', example: 'steel-plates' }
] as const satisfies readonly LessonCheck[];

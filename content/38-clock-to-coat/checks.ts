import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'steel', rule: 'blast-to-coat-clock', kind: 'field', example: 'steel-plates' },
	{ id: 'brass', rule: 'blast-to-coat-clock', kind: 'field', example: 'brass-levers' },
	{
		id: 'end',
		rule: 'blast-to-coat-clock',
		kind: 'reason',
		question: {
			en: 'When does the clock from blasting to coating stop?',
			es: '¿Cuándo se detiene el reloj de granallar a recubrir?'
		},
		options: {
			coated: {
				en: 'when the first coat is on the part',
				es: 'cuando la pieza tiene puesta la primera mano'
			},
			booth: { en: 'when the part hangs in the booth', es: 'cuando la pieza cuelga en la cabina' },
			wiped: { en: 'when the part is wiped with solvent', es: 'cuando se le pasa un paño con solvente' }
		},
		right: 'coated',
		because: {
			en: 'Until it is covered, the metal goes on taking up water and oxygen, in the booth as well. A wipe covers nothing.',
			es: 'Mientras no esté cubierto, el metal sigue tomando agua y oxígeno, también en la cabina. Un paño no cubre nada.'
		}
	},
	{
		id: 'tint',
		rule: 'blast-to-coat-clock',
		kind: 'reason',
		question: {
			en: 'It is a damp day. Blasted steel plates have time left on the clock, but their edges look slightly yellow. What do you do?',
			es: 'Es un día húmedo. A unas placas de acero granalladas les queda tiempo en el reloj, pero los bordes se ven algo amarillos. ¿Qué hace?'
		},
		options: {
			hurry: { en: 'coat them at once, before it gets worse', es: 'recubrirlas ya, antes de que empeore' },
			wipe: { en: 'wipe the edges and coat', es: 'pasar un paño por los bordes y recubrir' },
			back: {
				en: 'send them back to degreasing and blast them again',
				es: 'regresarlas a desengrase y granallarlas otra vez'
			}
		},
		right: 'back',
		because: {
			en: 'The colour is rust that has begun. The clock is the longest that is allowed, not a promise that nothing happens before.',
			es: 'Ese color es óxido que ya empezó. El reloj es lo máximo que se permite, no una promesa de que antes no pasa nada.'
		}
	},
	{ id: 'overdue', rule: 'overdue-starts-again', kind: 'field', example: 'overdue-plates' }
] as const satisfies readonly LessonCheck[];

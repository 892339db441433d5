import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'washed-hands',
		rule: 'clean-handling-gloves',
		kind: 'reason',
		question: {
			en: 'A colleague has just washed and dried his hands and turns a clean part over. What is on it now?',
			es: 'Un compañero acaba de lavarse y secarse las manos y voltea una pieza limpia. ¿Qué quedó en ella?'
		},
		options: {
			oil: {
				en: 'skin oil and salt, because skin makes new oil at once',
				es: 'aceite y sal de la piel, porque la piel produce más de inmediato'
			},
			nothing: { en: 'nothing, his hands were clean', es: 'nada, sus manos estaban limpias' },
			water: { en: 'a little water that dries off', es: 'un poco de agua que se seca sola' }
		},
		right: 'oil',
		because: {
			en: 'Washing takes off what is there, not what comes. Nobody sees the print before the oven.',
			es: 'Lavarse quita lo que hay, no lo que sigue saliendo. Nadie ve la huella antes del horno.'
		}
	},
	{ id: 'which-glove', rule: 'clean-handling-gloves', kind: 'field', example: 'steel-plates' },
	{
		id: 'phone',
		rule: 'clean-handling-gloves',
		kind: 'reason',
		question: {
			en: 'In clean gloves you answer your phone, then go on racking. What is wrong?',
			es: 'Con guantes limpios usted contesta el teléfono y sigue colgando piezas. ¿Qué está mal?'
		},
		options: {
			time: { en: 'the parts waited too long', es: 'las piezas esperaron demasiado' },
			right: { en: 'nothing: the gloves protect the parts', es: 'nada: los guantes protegen las piezas' },
			glove: {
				en: 'the gloves are now as dirty as the phone',
				es: 'los guantes ya están tan sucios como el teléfono'
			}
		},
		right: 'glove',
		because: {
			en: 'A glove carries whatever it touched last. A fresh pair costs less than one part.',
			es: 'Un guante lleva lo último que tocó. Un par nuevo cuesta menos que una pieza.'
		}
	},
	{
		id: 'touched',
		rule: 'clean-handling-gloves',
		kind: 'reason',
		question: {
			en: 'You touched a freshly blasted face with your bare wrist. What do you do?',
			es: 'Usted rozó con la muñeca una cara recién granallada. ¿Qué hace?'
		},
		options: {
			wipe: { en: 'wipe the spot with a solvent cloth', es: 'pasar un paño con solvente por la mancha' },
			again: {
				en: 'say so, degrease the part and blast it again',
				es: 'decirlo, desengrasar la pieza y granallarla otra vez'
			},
			blow: { en: 'blow it off and hang it up', es: 'sopletearla y colgarla' }
		},
		right: 'again',
		because: {
			en: 'The oil is in the valleys, where a cloth does not reach; wiping spreads it. Only the whole way round gets it out.',
			es: 'El aceite está en los valles, donde un paño no llega; frotarlo lo extiende. Solo la vuelta completa lo saca.'
		}
	},
	{ id: 'warm-castings', rule: 'clean-handling-gloves', kind: 'field', example: 'castings' }
] as const satisfies readonly LessonCheck[];

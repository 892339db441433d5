import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'of-what', rule: 'ratio-basis-from-sheet', kind: 'field', example: 'steel-plates' },
	{ id: 'batch', rule: 'batch-covers-the-job', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'hardener-in-cups', rule: 'hardener-by-volume', kind: 'field', example: 'steel-plates' },
	{ id: 'hardener-on-scale', rule: 'hardener-by-weight', kind: 'field', example: 'steel-plates' },
	{
		id: 'streaks',
		rule: 'stir-time',
		kind: 'reason',
		question: {
			en: 'You pull the stick along the wall of the cup and see pale streaks on it. The stirring time is not over yet. What do you do?',
			es: 'Pasa la varilla por la pared del vaso y sale con vetas claras. Todavía no se acaba el tiempo de agitado. ¿Qué hace?'
		},
		options: {
			scrape: {
				en: 'Scrape wall and bottom into the mix and go on, slowly, until no streaks are left.',
				es: 'Raspar pared y fondo hacia la mezcla y seguir, despacio, hasta que no quede ninguna veta.'
			},
			fast: {
				en: 'Turn the mixer up, so that it is done in the time that is left.',
				es: 'Subir la velocidad del agitador para terminar en el tiempo que queda.'
			},
			more: {
				en: 'Add a little hardener for the streaks.',
				es: 'Echar un poco más de endurecedor para las vetas.'
			}
		},
		right: 'scrape',
		because: {
			en: 'The hardener is all in, it is only not everywhere. A fast blade brings air and damp with it and still does not reach the wall. More hardener would leave all the rest with too much.',
			es: 'El endurecedor ya está todo adentro, solo que no en todas partes. Una paleta rápida mete aire y humedad y tampoco llega a la pared. Con más endurecedor, el resto quedaría con demasiado.'
		}
	}
] satisfies readonly LessonCheck[];

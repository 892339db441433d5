import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'witness-failed', rule: 'failed-witness-holds-load', kind: 'field' },
	{ id: 'readings', rule: 'film-readings-judged', kind: 'field', example: 'witness-readings' },
	{
		id: 'bury',
		rule: 'clean-dry-air',
		kind: 'reason',
		question: {
			en: 'There are pits in the first coat, and the truck comes soon. Why not lay a second coat over them?',
			es: 'Hay hoyos en la primera mano y el camión llega pronto. ¿Por qué no tapar con otra mano?'
		},
		options: {
			colour: {
				en: 'Because the colour would get darker.',
				es: 'Porque el color quedaría más oscuro.'
			},
			oil: {
				en: 'Because what pushed the film away is still there: it looks closed, and below it nothing holds.',
				es: 'Porque lo que apartó la película sigue ahí: se ve cerrada y por debajo nada agarra.'
			},
			time: {
				en: 'Because the second coat would not dry in time; with a faster thinner it would be right.',
				es: 'Porque la segunda mano no secaría a tiempo; con un diluyente más rápido estaría bien.'
			}
		},
		right: 'oil',
		because: {
			en: 'A coat on top closes the view, not the fault, and if the oil comes with the air you spray more of it. Take the film off, find the source, prove it gone, then coat.',
			es: 'Otra mano tapa la vista, no la falla, y si el aceite viene con el aire, aplica más. Quite la película, halle la fuente, demuestre que ya no está y entonces recubra.'
		}
	},
	{
		id: 'bake-again',
		rule: 'hold-time',
		kind: 'reason',
		question: {
			en: 'The chart shows that the parts were held too short, and the film is soft. What now?',
			es: 'El registro muestra que las piezas estuvieron poco tiempo y la película está blanda. ¿Y ahora?'
		},
		options: {
			sheet: {
				en: 'Hold the load, tell the supervisor, and look in the data sheet whether it may be baked once more.',
				es: 'Retener la carga, avisar al supervisor y ver en la hoja técnica si se puede hornear otra vez.'
			},
			hotter: {
				en: 'Back into the oven at once, hotter, to make up for the time.',
				es: 'De vuelta al horno enseguida, más caliente, para reponer el tiempo.'
			},
			hardener: {
				en: 'Wipe a little hardener over the film and let it stand until morning.',
				es: 'Untar un poco de endurecedor sobre la película y dejarla hasta mañana.'
			}
		},
		right: 'sheet',
		because: {
			en: 'Some films take a second bake, others turn brittle or let go. Only the sheet knows. Hotter can warp the part, and hardener on top does not reach the film below.',
			es: 'Unas películas aguantan otro horneado; otras se vuelven quebradizas o se sueltan. Solo la hoja lo sabe. Más calor puede torcer la pieza, y el endurecedor encima no llega a la película de abajo.'
		}
	},
	{ id: 'releaser', rule: 'release-by-another', kind: 'field' }
] satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'anodised', rule: 'scuff-instead-of-blasting', kind: 'field', example: 'anodised-panels' },
	{
		id: 'iron',
		rule: 'iron-free-media',
		kind: 'reason',
		question: {
			en: 'The cabinet is full of fine aluminium oxide. All week it blasted steel. Now stainless tubes are due. What do you do?',
			es: 'La cabina tiene óxido de aluminio fino. Toda la semana granalló acero. Ahora tocan tubos de inoxidable. ¿Qué hace?'
		},
		options: {
			change: {
				en: 'clean the cabinet out and put in the fill kept for stainless',
				es: 'vaciar y limpiar la cabina y poner el abrasivo guardado para inoxidable'
			},
			go: {
				en: 'go on: aluminium oxide holds no iron',
				es: 'seguir: el óxido de aluminio no tiene hierro'
			},
			rinse: {
				en: 'blast, then wipe the tubes with solvent',
				es: 'granallar y luego pasar paño con solvente por los tubos'
			}
		},
		right: 'change',
		because: {
			en: 'The grain itself holds no iron, but it carries what it knocked off the steel. That is driven into the stainless, and no wipe gets it out again.',
			es: 'El grano no tiene hierro, pero lleva el que le arrancó al acero. Ese queda clavado en el inoxidable, y ningún paño lo saca.'
		}
	},
	{ id: 'pressure', rule: 'blast-pressure', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'nozzle', rule: 'nozzle-compressor-carries', kind: 'field', example: 'steel-plates' },
	{ id: 'profile', rule: 'profile-under-half-film', kind: 'field', example: 'stainless-tubes' },
	{
		id: 'striped',
		rule: 'blast-stand-off',
		kind: 'reason',
		question: {
			en: 'A blasted plate shows matt and shiny stripes. The gauge stood still all the time. What is the first thing to look at?',
			es: 'Una placa granallada muestra franjas mates y brillantes. El manómetro no se movió. ¿Qué revisa primero?'
		},
		options: {
			film: {
				en: 'a thicker film, to hide the stripes',
				es: 'una película más gruesa, para tapar las franjas'
			},
			arm: {
				en: 'your distance: the arm came nearer and went away',
				es: 'su distancia: el brazo se acercó y se alejó'
			},
			grain: { en: 'coarser grain, to bite better', es: 'grano más grueso, para que muerda más' }
		},
		right: 'arm',
		because: {
			en: 'With grain and pressure the same, only the distance and the pace of your hand can change along a stroke.',
			es: 'Con el mismo grano y la misma presión, a lo largo de una pasada solo pueden cambiar la distancia y el ritmo de su mano.'
		}
	},
	{ id: 'paper', rule: 'laminate-scuff-paper', kind: 'field', example: 'laminate-panels' },
	{ id: 'medium', rule: 'media-suits-metal', kind: 'field', example: 'aluminium-brackets' }
] as const satisfies readonly LessonCheck[];

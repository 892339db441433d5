import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'first-move',
		rule: 'failed-witness-holds-load',
		kind: 'reason',
		question: {
			en: 'Round pits appear on the third of twenty parts. What is your first move?',
			es: 'En la tercera de veinte piezas aparecen hoyos redondos. ¿Qué hace primero?'
		},
		options: {
			pressure: {
				en: 'Set the pressure a little lower and watch the fourth part.',
				es: 'Bajar un poco la presión y ver la cuarta pieza.'
			},
			hold: {
				en: 'Stop, hold it and all parts since the last good one, leave the settings, write them down.',
				es: 'Parar, retenerla con todas desde la última buena, dejar los ajustes y anotarlos.'
			},
			finish: {
				en: 'Finish the rack while the mix is good, then sort the parts.',
				es: 'Terminar el bastidor mientras sirve la mezcla y después separar las piezas.'
			}
		},
		right: 'hold',
		because: {
			en: 'Whatever makes the pits meets the other parts too. And the settings are evidence: once turned, they say nothing about the part that failed.',
			es: 'Lo que hace los hoyos les llega también a las demás. Y los ajustes son evidencia: una vez movidos, ya no dicen nada de la pieza que falló.'
		}
	},
	{ id: 'air-today', rule: 'clean-dry-air', kind: 'field', example: 'oily-air' },
	{
		id: 'same-place',
		rule: 'bake-out-temperature',
		kind: 'reason',
		question: {
			en: 'After the oven every casting has blisters near the same boss. The sheet witness of that load is clean. What does that point to?',
			es: 'Después del horno cada fundición tiene ampollas junto al mismo resalte. El panel testigo de lámina de esa carga está limpio. ¿A qué apunta?'
		},
		options: {
			gas: {
				en: 'Gas out of the part: it was not baked out enough there.',
				es: 'A gas de la pieza: ahí no se desgasificó lo suficiente.'
			},
			flash: {
				en: 'Flash-off too short: solvent boiled in the film.',
				es: 'A evaporación corta: hirvió el solvente de la película.'
			},
			oil: {
				en: 'Oil in the compressed air.',
				es: 'A aceite en el aire comprimido.'
			}
		},
		right: 'gas',
		because: {
			en: 'The witness had the same film, the same flash-off and the same air, and it is clean. What differs is the metal. Solvent sits where the film is thick, oil sits at random; a place that repeats belongs to the part.',
			es: 'El testigo tuvo la misma película, la misma evaporación y el mismo aire, y está limpio. Lo distinto es el metal. El solvente sale donde la película es gruesa y el aceite al azar; un lugar que se repite es de la pieza.'
		}
	},
	{
		id: 'rough-band',
		rule: 'gun-distance',
		kind: 'reason',
		question: {
			en: 'A dull band runs along the far edge of each part. Which test tells dry spray from a film that only has low gloss?',
			es: 'Una franja opaca corre por el borde lejano de cada pieza. ¿Qué prueba distingue la aplicación seca de una película que solo tiene poco brillo?'
		},
		options: {
			gauge: {
				en: 'The thickness gauge: dry spray is always thinner.',
				es: 'El medidor de espesor: lo seco siempre es más delgado.'
			},
			bake: {
				en: 'A second bake: dry spray flows out.',
				es: 'Otro horneado: lo seco se nivela.'
			},
			nail: {
				en: 'A nail and a dry finger: dry spray is rough and gives off powder, low gloss alone is smooth.',
				es: 'La uña y un dedo seco: lo seco es áspero y suelta polvo; el poco brillo solo es liso.'
			}
		},
		right: 'nail',
		because: {
			en: 'Drops that landed half dry stay as grains. That feels like sandpaper and points to distance, pressure or hot air. A smooth dull face points to the can or to the oven.',
			es: 'Las gotas que llegaron medio secas se quedan como granos. Se siente como lija y apunta a distancia, presión o aire caliente. Una cara opaca y lisa apunta a la lata o al horno.'
		}
	},
	{
		id: 'flake',
		rule: 'water-break-whole-minute',
		kind: 'reason',
		question: {
			en: 'A flake has come off. The metal below is bright, the back of the flake is clean. Which group of causes do you ask first?',
			es: 'Se soltó una escama. El metal de abajo está brillante y el reverso de la escama, limpio. ¿Por qué grupo de causas pregunta primero?'
		},
		options: {
			preparation: {
				en: 'Preparation: the film never held to this surface.',
				es: 'Preparación: la película nunca se agarró a esta superficie.'
			},
			cure: {
				en: 'Material: the film itself did not cure.',
				es: 'Material: la película misma no curó.'
			},
			technique: {
				en: 'Technique: the pass was too slow.',
				es: 'Técnica: la pasada fue muy lenta.'
			}
		},
		right: 'preparation',
		because: {
			en: 'It parted cleanly between metal and film, so the film is whole and its hold was missing: oil, a print, water, oxide, no key. With coating on both sides it would have split in itself, and the cure would be asked.',
			es: 'Se separó limpio entre metal y película: la película está entera y faltó el agarre: aceite, una huella, agua, óxido, falta de anclaje. Con recubrimiento en ambos lados se habría partido por dentro, y habría que preguntar por el curado.'
		}
	},
	{ id: 'waited', rule: 'overdue-starts-again', kind: 'field', example: 'overdue-plates' }
] satisfies readonly LessonCheck[];

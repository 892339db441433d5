import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'coldest-part', rule: 'lowest-surface-temperature', kind: 'field', example: 'cold-part' },
	{
		id: 'why-wait',
		rule: 'surface-above-dew-point',
		kind: 'reason',
		question: {
			en: 'The room is warm, the parts came off a cold truck and look dry. Why do they still have to wait?',
			es: 'El taller está tibio, las piezas bajaron de un camión frío y se ven secas. ¿Por qué tienen que esperar?'
		},
		options: {
			paint: {
				en: 'Cold metal makes the paint too thin, so it runs off the edges.',
				es: 'El metal frío adelgaza la pintura y escurre de los bordes.'
			},
			water: {
				en: 'The room’s damp leaves a film of water on cold metal that nobody sees, and the coating lies on it.',
				es: 'La humedad del taller deja en el metal frío una capa de agua que nadie ve, y el recubrimiento queda sobre ella.'
			},
			oven: {
				en: 'Cold parts take longer in the oven, so the shift ends late.',
				es: 'Las piezas frías tardan más en el horno y el turno termina tarde.'
			}
		},
		right: 'water',
		because: {
			en: 'Near the dew point of this air, water settles before any fog can be seen. A film laid on water peels, and no test before the oven shows it. Only the probe on the part does.',
			es: 'Cerca del punto de rocío de este aire, el agua se deposita antes de que se vea empañado. Una película sobre agua se desprende, y ninguna prueba antes del horno lo muestra. Solo la sonda en la pieza.'
		}
	},
	{ id: 'hot-day', rule: 'air-in-window', kind: 'field', example: 'hot-day' },
	{
		id: 'oil-ring',
		rule: 'clean-dry-air',
		kind: 'reason',
		question: {
			en: 'The white paper shows a faint ring of oil. Someone drains the trap and says the air is fine now. What do you do?',
			es: 'El papel blanco muestra un anillo tenue de aceite. Alguien purga la trampa y dice que el aire ya está bien. ¿Qué hace usted?'
		},
		options: {
			spray: {
				en: 'Spray, because the trap is empty again.',
				es: 'Aplicar, porque la trampa ya está vacía.'
			},
			wipe: {
				en: 'Spray, and wipe the parts once more with solvent before.',
				es: 'Aplicar, pero antes limpiar otra vez las piezas con solvente.'
			},
			again: {
				en: 'Hold a new paper in the stream, and spray only if it stays clean.',
				es: 'Poner un papel nuevo en el chorro y aplicar solo si queda limpio.'
			}
		},
		right: 'again',
		because: {
			en: 'The oil sits in the hose and the filter too. Only a clean paper shows that it is gone. Wiping the parts does not help: the oil comes with the spray.',
			es: 'El aceite también está en la manguera y en el filtro. Solo un papel limpio muestra que ya no hay. Limpiar las piezas no sirve: el aceite llega con el rociado.'
		}
	},
	{ id: 'all-clear', rule: 'go-when-clear', kind: 'field', example: 'steel-plates' },
	{ id: 'far-from-the-shop', rule: 'part-near-shop-temperature', kind: 'field', example: 'cold-part' },
	{ id: 'damp-day', rule: 'humidity-in-window', kind: 'field', example: 'damp-day' }
] satisfies readonly LessonCheck[];

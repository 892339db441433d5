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
	{
		id: 'gauge-place',
		rule: 'pressure-at-the-cap',
		kind: 'reason',
		question: {
			en: 'The gauge on the handle is where it was yesterday, but the spray has turned to dry fog. The hose is a new, shorter one. What do you do first?',
			es: 'El manómetro del mango marca lo mismo que ayer, pero el rociado se volvió niebla seca. La manguera es nueva y más corta. ¿Qué hace primero?'
		},
		options: {
			cap: {
				en: 'Put on the test cap and read what leaves the gun; set that.',
				es: 'Poner la boquilla de prueba, leer lo que sale de la pistola y ajustar eso.'
			},
			closer: {
				en: 'Go closer until the film looks wet.',
				es: 'Acercarse hasta que la película se vea húmeda.'
			},
			thinner: { en: 'Add thinner.', es: 'Echar más diluyente.' }
		},
		right: 'cap',
		because: {
			en: 'Paint is broken up by the pressure that leaves the cap. The other gauges stand before losses that change with hose, fittings and tip. Distance and thinner would hide one fault behind another.',
			es: 'La pintura la rompe la presión que sale de la boquilla. Los otros manómetros están antes de pérdidas que cambian con manguera, conexiones y pico. Con distancia o diluyente se tapa una falla con otra.'
		}
	},
	{ id: 'fan', rule: 'fan-width', kind: 'field', example: 'aluminium-brackets' },
	{ id: 'wet-film', rule: 'wet-film-for-dry-film', kind: 'field', example: 'steel-plates' },
	{ id: 'order', rule: 'recesses-first-show-face-last', kind: 'field', example: 'steel-plates' }
] satisfies readonly LessonCheck[];

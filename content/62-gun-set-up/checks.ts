import type { LessonCheck } from '$lib/lessons';

export default [
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
			es: 'Lo que rompe la pintura es la presión que sale de la boquilla. Los otros manómetros están antes de pérdidas que cambian con manguera, conexiones y pico. Con distancia o diluyente se tapa una falla con otra.'
		}
	},
	{ id: 'cap', rule: 'cap-pressure', kind: 'field', example: 'steel-plates' },
	{
		id: 'coarse-drops',
		rule: 'hvlp-limit',
		kind: 'reason',
		question: {
			en: 'The HVLP gun is at its limit at the cap and the drops are still coarse. What is the way on?',
			es: 'La pistola HVLP está en su límite en la boquilla y las gotas siguen gruesas. ¿Por dónde se sigue?'
		},
		options: {
			more: {
				en: 'Turn up a little more; the film counts, not the gauge.',
				es: 'Subir un poco más; cuenta la película, no el manómetro.'
			},
			far: {
				en: 'Step back so that the drops have time to get finer.',
				es: 'Alejarse para que las gotas tengan tiempo de afinarse.'
			},
			cause: {
				en: 'Check paint temperature, flow cup and tip, and leave the pressure.',
				es: 'Revisar temperatura de la pintura, copa de flujo y pico, y dejar la presión.'
			}
		},
		right: 'cause',
		because: {
			en: 'Past the limit it no longer is an HVLP gun, and fog takes the place of coarse drops. Thick or cold paint and the wrong tip are the usual causes, and each of them can be looked at.',
			es: 'Pasado el límite ya no es una pistola HVLP, y en vez de gotas gruesas hay niebla. Lo usual es pintura espesa o fría, o un pico equivocado, y las tres cosas se pueden revisar.'
		}
	},
	{ id: 'distance', rule: 'gun-distance', kind: 'field', example: 'steel-plates' },
	{ id: 'fan', rule: 'fan-width', kind: 'field', example: 'aluminium-brackets' }
] satisfies readonly LessonCheck[];

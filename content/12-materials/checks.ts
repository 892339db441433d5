import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'unknown-metal',
		rule: 'material-known',
		kind: 'reason',
		question: {
			en: 'Six light grey blocks came in. The ticket says only "metal". What do you do?',
			es: 'Llegaron seis bloques gris claro. La orden solo dice «metal». ¿Qué hace?'
		},
		options: {
			grind: { en: 'grind a corner and look at the sparks', es: 'esmerilar una esquina y mirar las chispas' },
			aluminium: {
				en: 'treat them as aluminium, they are light',
				es: 'tratarlos como aluminio, porque son livianos'
			},
			ask: {
				en: 'leave them as they are and ask what they are made of',
				es: 'dejarlos como están y preguntar de qué son'
			}
		},
		right: 'ask',
		because: {
			en: 'Light and grey fits aluminium and magnesium alike. Sparks in magnesium dust start a fire, and no setting is right for a metal without a name.',
			es: 'Liviano y gris puede ser aluminio o magnesio. Una chispa en polvo de magnesio inicia un incendio, y ningún ajuste es correcto para un metal sin nombre.'
		}
	},
	{ id: 'magnet', rule: 'magnet-agrees-with-paper', kind: 'field', example: 'magnetic-stainless' },
	{ id: 'yellow', rule: 'yellow-plating-isolated', kind: 'field', example: 'yellow-plates' },
	{
		id: 'only-paint',
		rule: 'old-coating-questioned',
		kind: 'reason',
		question: {
			en: 'Plates with an old, firm coating came in. Nobody knows what it is. Why do you not just blast it off?',
			es: 'Llegaron placas con un recubrimiento viejo y firme. Nadie sabe qué es. ¿Por qué no se granalla y ya?'
		},
		options: {
			dust: {
				en: 'its dust may hold lead, chromium or cadmium',
				es: 'su polvo puede tener plomo, cromo o cadmio'
			},
			grain: { en: 'it wears out the blast grain', es: 'gasta el abrasivo' },
			grip: {
				en: 'a firm old film is the best ground for a new one',
				es: 'una película vieja y firme es la mejor base para una nueva'
			}
		},
		right: 'dust',
		because: {
			en: 'Blasting makes the old film into dust, and nobody knows what is in it. Ask for its history or a test first. It may also lift later and take your film along.',
			es: 'Al granallar, la película vieja se vuelve polvo y nadie sabe qué contiene. Pida primero el historial o una prueba. Además puede levantarse después y llevarse la suya.'
		}
	},
	{ id: 'waxy-tubs', rule: 'low-energy-plastic-asked', kind: 'field', example: 'polypropylene-tubs' },
	{ id: 'magnesium', rule: 'magnesium-refused', kind: 'field', example: 'magnesium-boxes' }
] as const satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'speed', rule: 'gun-speed', kind: 'field', example: 'steel-plates' },
	{
		id: 'tired-arm',
		rule: 'gun-speed',
		kind: 'reason',
		question: {
			en: 'Nobody touched the gun, but the parts of the last hour are thicker than those of the morning. Where do you look first?',
			es: 'Nadie tocó la pistola, pero las piezas de la última hora salen más gruesas que las de la mañana. ¿Dónde mira primero?'
		},
		options: {
			pressure: {
				en: 'At the cap pressure: turn it down a little.',
				es: 'En la presión de la boquilla: bajarla un poco.'
			},
			time: {
				en: 'At the arm: time a stroke of known length.',
				es: 'En el brazo: medir el tiempo de una pasada de largo conocido.'
			},
			thinner: {
				en: 'At the paint: add thinner, so that less stays.',
				es: 'En la pintura: echar diluyente para que quede menos.'
			}
		},
		right: 'time',
		because: {
			en: 'With the gun as it was, the speed of the arm sets the film. A tired arm slows down and does not feel it. A watch tells at once, and nothing has been changed yet.',
			es: 'Con la pistola igual, la velocidad del brazo marca la película. Un brazo cansado va más lento y no lo siente. El reloj lo dice enseguida, sin haber cambiado nada.'
		}
	},
	{ id: 'overlap', rule: 'pass-overlap', kind: 'field', example: 'steel-plates' },
	{ id: 'order', rule: 'recesses-first-show-face-last', kind: 'field', example: 'steel-plates' },
	{
		id: 'dusty-face',
		rule: 'recesses-first-show-face-last',
		kind: 'reason',
		question: {
			en: 'The show face was sprayed first and looked fine. Then came the pocket beside it. Now the face feels rough. Why?',
			es: 'La cara visible se aplicó primero y se veía bien. Luego siguió el hueco de al lado. Ahora la cara se siente áspera. ¿Por qué?'
		},
		options: {
			mist: {
				en: 'Mist from the pocket fell half dry on a film that had already set.',
				es: 'La niebla del hueco cayó medio seca sobre una película que ya se había asentado.'
			},
			thin: {
				en: 'The face got one coat too few.',
				es: 'A la cara le faltó una mano.'
			},
			cold: {
				en: 'The part cooled down while the pocket was sprayed.',
				es: 'La pieza se enfrió mientras se aplicaba el hueco.'
			}
		},
		right: 'mist',
		because: {
			en: 'A pocket throws air and mist back out. On bare metal the next strokes cover it; on a film that has set it stays as grain. So the show face comes last.',
			es: 'Un hueco devuelve aire y niebla. Sobre metal desnudo la cubren las pasadas que siguen; sobre una película asentada queda como grano. Por eso la cara visible va al final.'
		}
	}
] satisfies readonly LessonCheck[];

import type { LessonCheck } from '$lib/lessons';

export default [
	{ id: 'window', rule: 'cure-part-temperature', kind: 'field', example: 'steel-plates' },
	{ id: 'lowest-limit', rule: 'cure-below-part-limit', kind: 'field', example: 'abs-shells' },
	{
		id: 'fume',
		rule: 'below-fume-limit',
		kind: 'reason',
		question: {
			en: 'The sheet prints its cure in °F. The display of this oven is in °C, and somebody set the same number. Smoke comes from the door. What do you do?',
			es: 'La hoja da el curado en °F. La pantalla de este horno está en °C y alguien puso el mismo número. Sale humo por la puerta. ¿Qué hace?'
		},
		options: {
			out: {
				en: 'Heat off, everybody out, call the lead. The load stays where it is.',
				es: 'Apago el calor, todos afuera y llamo al responsable. La carga se queda donde está.'
			},
			open: {
				en: 'Open the door wide, so that the load cools and the smoke gets out.',
				es: 'Abro la puerta del todo para que la carga enfríe y salga el humo.'
			},
			down: {
				en: 'Set the right number and let the load finish its time.',
				es: 'Pongo el número correcto y dejo que la carga termine su tiempo.'
			}
		},
		right: 'out',
		because: {
			en: 'The film is far past its cure and breaks down into fume that makes people ill hours later. An open door brings it to your face and fresh air to a possible fire. The load is lost in any case.',
			es: 'La película pasó por mucho su curado y se descompone en humo que enferma horas después. Abrir la puerta se lo echa en la cara y le da aire a un posible incendio. La carga ya está perdida.'
		}
	},
	{ id: 'heat-up', rule: 'heat-up-before-soak', kind: 'field', example: 'steel-plates' },
	{
		id: 'clock',
		rule: 'clock-starts-on-part',
		kind: 'reason',
		question: {
			en: 'The timer was started when the display reached the set temperature. The plates are hard, the thick blocks rub off on the rag. Why?',
			es: 'El reloj arrancó cuando la pantalla llegó a la temperatura. Las placas salieron duras y los bloques gruesos manchan el trapo. ¿Por qué?'
		},
		options: {
			thick: {
				en: 'Blocks take a thicker film, and thick films stay soft.',
				es: 'Los bloques toman una película más gruesa, y lo grueso queda blando.'
			},
			part: {
				en: 'The air was hot, the blocks were not: part of the counted time was their warm-up.',
				es: 'El aire estaba caliente, los bloques no: parte del tiempo contado fue su calentamiento.'
			},
			display: {
				en: 'The display reads too high and has to be set down.',
				es: 'La pantalla marca de más y hay que bajarla.'
			}
		},
		right: 'part',
		because: {
			en: 'The display may be quite right: it reads air. The film cures at the temperature of the metal under it, and the slowest metal says when the time begins.',
			es: 'La pantalla puede estar muy bien: lee aire. La película cura a la temperatura del metal que tiene debajo, y el metal más lento dice cuándo empieza el tiempo.'
		}
	},
	{ id: 'hold', rule: 'hold-time', kind: 'field', example: 'steel-plates' }
] satisfies readonly LessonCheck[];

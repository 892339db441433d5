import type { LessonCheck } from '$lib/lessons';

export default [
	{
		id: 'flash-cut',
		rule: 'flash-time',
		kind: 'reason',
		question: {
			en: 'The job is late and the flash-off was cut to a few minutes. What comes out of the oven, and where do you look?',
			es: 'El trabajo va tarde y la evaporación se recortó a unos minutos. ¿Qué sale del horno y dónde se mira?'
		},
		options: {
			thin: {
				en: 'A thin film on the edges.',
				es: 'Una película delgada en los bordes.'
			},
			dust: {
				en: 'More dust nibs, on the faces that lay up.',
				es: 'Más granos de polvo, en las caras que quedaron hacia arriba.'
			},
			pop: {
				en: 'Tiny burst blisters, where the film is thickest, and more vapour in the oven than it was meant to have.',
				es: 'Ampollitas reventadas donde la película es más gruesa, y más vapor en el horno del previsto.'
			}
		},
		right: 'pop',
		because: {
			en: 'The skin closed while solvent was still below; it boiled through. All that solvent became vapour inside the oven, so the short cut is a safety matter too.',
			es: 'La piel se cerró con solvente debajo y este la atravesó hirviendo. Todo ese solvente se volvió vapor dentro del horno: el atajo también es asunto de seguridad.'
		}
	},
	{ id: 'load', rule: 'oven-solvent-load', kind: 'field', example: 'steel-plates' },
	{ id: 'start', rule: 'purge-before-heat', kind: 'field', example: 'steel-plates' },
	{
		id: 'three-times-the-wall',
		rule: 'heat-up-before-soak',
		kind: 'reason',
		question: {
			en: 'Yesterday a steel plate took eight minutes from the door to the window. Today a steel block with three times the wall goes in, same sheet, same oven. When do you expect the hold to begin?',
			es: 'Ayer una placa de acero tardó ocho minutos de la puerta a la ventana. Hoy entra un bloque de acero con el triple de pared, misma hoja, mismo horno. ¿Cuándo espera que empiece el tiempo de curado?'
		},
		options: {
			same: {
				en: 'After eight minutes again: the oven is the same.',
				es: 'A los ocho minutos otra vez: el horno es el mismo.'
			},
			triple: {
				en: 'After some twenty-five minutes, and I watch the thermocouple from twenty on.',
				es: 'A los veinticinco minutos, y desde los veinte vigilo el termopar.'
			},
			square: {
				en: 'After more than an hour: heat-up goes with the square of the wall.',
				es: 'Después de más de una hora: el calentamiento va con el cuadrado de la pared.'
			}
		},
		right: 'triple',
		because: {
			en: 'A metal wall heats as one. Three times the wall holds three times the heat, and the air gives it no faster. The square of the wall would only count where the core lags far behind the skin, as in very thick plastic.',
			es: 'Una pared de metal se calienta pareja. El triple de pared guarda el triple de calor, y el aire no lo da más rápido. El cuadrado de la pared solo contaría donde el núcleo se atrasa mucho respecto a la piel, como en plástico muy grueso.'
		}
	},
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

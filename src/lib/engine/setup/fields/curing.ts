import { fieldsOf } from '../field';

const { quantity, choice, choices } = fieldsOf({ station: 'curing', competency: 'curing' });

export const curingFields = {
	'flash-time': quantity('duration', 'Flash-off before the oven', 'Evaporación antes del horno'),
	'cure-temperature': quantity('temperature', 'Cure: part temperature', 'Curado: temperatura de la pieza'),
	'heat-up': quantity(
		'duration',
		'Heat-up, estimated: from the oven door to the slowest part in the window',
		'Calentamiento, estimado: de la puerta del horno a la pieza más lenta en la ventana'
	),
	'cure-hold': quantity(
		'duration',
		'Cure: time at part temperature',
		'Curado: tiempo a temperatura de la pieza'
	),
	'clock-starts': choice(
		{
			door: { en: 'when the oven door closes', es: 'al cerrar la puerta del horno' },
			air: {
				en: 'when the display reaches the set temperature',
				es: 'cuando la pantalla llega a la temperatura'
			},
			part: {
				en: 'when the slowest part is in the window',
				es: 'cuando la pieza más lenta entra en la ventana'
			}
		},
		'When does the cure clock start?',
		'¿Cuándo empieza a contar el curado?'
	),
	'probe-places': choices(
		{
			heaviest: { en: 'heaviest section', es: 'sección más pesada' },
			thinnest: { en: 'thinnest or most heat-limited spot', es: 'zona más delgada o más limitada por calor' },
			'rack-wire': { en: 'wire of the rack', es: 'alambre del bastidor' },
			'oven-wall': { en: 'oven wall', es: 'pared del horno' }
		},
		'Where do the thermocouples go?',
		'¿Dónde van los termopares?'
	),
	'mixed-rack': choice(
		{
			together: { en: 'one load, one time by the display', es: 'una carga, un tiempo según la pantalla' },
			split: {
				en: 'split the load, or hold by the heaviest and watch the thinnest',
				es: 'dividir la carga, o contar por la más pesada y vigilar la más delgada'
			}
		},
		'Thin and thick parts are on the ticket. How do they go in?',
		'Hay piezas delgadas y gruesas en la orden. ¿Cómo entran?'
	),
	'cool-to': quantity('temperature', 'Handle and measure when cooled to', 'Manipular y medir cuando enfríe a')
} as const;

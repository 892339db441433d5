import { fieldsOf } from '../field';

const { quantity, choice } = fieldsOf({ station: 'curing', competency: 'curing' });

/** What is to be done with a load, from its chart. */
export const CHART_VERDICTS = {
	accept: { en: 'accept the load', es: 'aceptar la carga' },
	'short-cold': {
		en: 'keep it back: too short or too cold',
		es: 'retenerla: muy corto o muy frío'
	},
	'long-hot': {
		en: 'keep it back: too long or too hot',
		es: 'retenerla: muy largo o muy caliente'
	}
} as const;
export type ChartVerdict = keyof typeof CHART_VERDICTS;

/** The chart of one oven load, read off, and what it means for the load. */
export const chartReadingFields = {
	'soak-starts': quantity(
		'duration',
		'When does the soak start, the time that counts as cure? Counted from closing the door',
		'¿Cuándo empieza el tiempo que cuenta como curado? Contado desde que se cierra la puerta'
	),
	'soak-ends': quantity(
		'duration',
		'When does the soak end? A place leaves the window or the door opens, whichever comes first',
		'¿Cuándo termina ese tiempo? Un lugar sale de la ventana o se abre la puerta, lo que pase primero'
	),
	'chart-verdict': choice(CHART_VERDICTS, 'What do you do with this load?', '¿Qué hace usted con esta carga?')
} as const;

import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

const CUBIC_FOOT_PER_MINUTE = 0.3048 ** 3 / 60;
const HORSEPOWER = 550 * 0.3048 * 0.45359237 * 9.80665;
/** Free air per horsepower at the usual 7 bar; other charts say 4. */
const YIELD = (4.5 * CUBIC_FOOT_PER_MINUTE) / HORSEPOWER;

/** Shaft power of a workshop compressor at about 7 bar by rule of thumb, 4.5 cfm of free air to the horsepower. */
export const compressorPower = defineFormula({
	id: 'compressor-power',
	title: { en: 'Compressor power, rule of thumb', es: 'Potencia del compresor, regla práctica' },
	equation: 'P = Q / (4.5 cfm per hp)',
	source: cite('blast-nozzle-chart', 'note on horsepower', { read: 'note' }, 'common-practice'),
	inputs: { air: 'flow' },
	gives: 'power',
	validFor: { air: [0, 0.5] },
	compute: ({ air }) => air / YIELD
});

import { cite } from '../../sources/provenance';
import { PASCAL_PER_PSI } from '../../units/construct';
import { defineFormula } from '../formula';

const POUND = 0.45359237;
const SQUARE_INCH = 0.0254 ** 2;
const RANKINE_PER_KELVIN = 1.8;

/** W = 0.5303·A·C·P/√T in lb/s, in², psia and °R, brought to SI. */
const FACTOR = (0.5303 * POUND) / (SQUARE_INCH * PASCAL_PER_PSI * Math.sqrt(RANKINE_PER_KELVIN));
/** The handbook does not use it where upstream is less than so many times the barometer. */
const LEAST = 2;

/**
 * Air through an orifice into the open as compressed-air handbooks tabulate it (formula of S. A. Moss, 1906). It lies
 * 0.3 % under the exact sonic flow. `upstream` and `barometer` are absolute; `coefficient` is 1 in the table, 0.97 for a
 * well-rounded approach, 0.65 for a sharp edge. Throws where upstream is less than twice the barometer.
 */
export const handbookOrificeFlow = defineFormula({
	id: 'handbook-orifice-flow',
	title: { en: 'Air through an orifice, handbook formula', es: 'Aire por un orificio, fórmula de manual' },
	equation: 'W = 0.5303 · A · C · P / √T (lb/s, in², psia, °R)',
	source: cite('orifice-air-table', 'note below the table', { read: 'formula and notes' }, 'handbook'),
	inputs: {
		area: 'area',
		coefficient: 'fraction',
		upstream: 'pressure',
		barometer: 'pressure',
		temperature: 'temperature'
	},
	gives: 'mass-flow',
	validFor: {
		area: [1e-8, 0.01],
		coefficient: [0.5, 1],
		upstream: [120e3, 2e6],
		barometer: [60e3, 110e3],
		temperature: [250, 350]
	},
	compute({ area, coefficient, upstream, barometer, temperature }) {
		if (upstream < LEAST * barometer)
			throw new RangeError(
				`handbook-orifice-flow: ${upstream} Pa is too low a pressure; allowed is from ${LEAST * barometer} Pa, twice the barometer`
			);
		return (FACTOR * area * coefficient * upstream) / Math.sqrt(temperature);
	}
});

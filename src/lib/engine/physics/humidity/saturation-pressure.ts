import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { defineFormula } from '../formula';

/**
 * Pressure of water vapour in saturated air over liquid water.
 *   ln p = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T   (T in K, p in Pa)
 * Starts at the triple point, not at 0 °C: the ice and water branches only meet there.
 */
export const saturationPressure = defineFormula({
	id: 'saturation-pressure',
	title: { en: 'Saturation pressure of water', es: 'Presión de saturación del agua' },
	equation: 'ln p = C8/T + C9 + C10·T + C11·T² + C12·T³ + C13·ln T',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, eq. 6',
		{ read: 'coefficients in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { air: 'temperature' },
	gives: 'pressure',
	validFor: { air: [celsius(0.01), celsius(200)] },
	compute: ({ air: T }) =>
		Math.exp(
			-5.8002206e3 / T +
				1.3914993 -
				4.8640239e-2 * T +
				4.1764768e-5 * T ** 2 -
				1.4452093e-8 * T ** 3 +
				6.5459673 * Math.log(T)
		)
});

import { cite } from '../../sources/provenance';
import { celsius } from '../../units/construct';
import { defineFormula } from '../formula';

/**
 * Pressure of water vapour in saturated air over ice, for frost points of dried compressed air.
 *   ln p = C1/T + C2 + C3·T + C4·T² + C5·T³ + C6·T⁴ + C7·ln T   (T in K, p in Pa)
 * Ends at the triple point, where it meets the branch over water.
 */
export const saturationPressureIce = defineFormula({
	id: 'saturation-pressure-ice',
	title: { en: 'Saturation pressure over ice', es: 'Presión de saturación sobre hielo' },
	equation: 'ln p = C1/T + C2 + C3·T + C4·T² + C5·T³ + C6·T⁴ + C7·ln T',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, eq. 5',
		{ read: 'coefficients in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { air: 'temperature' },
	gives: 'pressure',
	validFor: { air: [celsius(-100), celsius(0.01)] },
	compute: ({ air: T }) =>
		Math.exp(
			-5.6745359e3 / T +
				6.3925247 -
				9.677843e-3 * T +
				6.2215701e-7 * T ** 2 +
				2.0747825e-9 * T ** 3 -
				9.484024e-13 * T ** 4 +
				4.1635019 * Math.log(T)
		)
});

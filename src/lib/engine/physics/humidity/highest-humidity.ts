import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { MAGNUS_RANGE, saturationExponent } from './magnus';

/**
 * Highest relative humidity at which a surface still keeps its margin over the dew point: the humidity whose dew point
 * lies that margin below the surface. 85 % is not always low enough, least of all for a part colder than the air. A
 * surface warmer than the air by the margin or more may stand in any humidity: 1.
 */
export const highestHumidity = defineFormula({
	id: 'highest-humidity',
	title: {
		en: 'Highest humidity that keeps the surface dry',
		es: 'Humedad máxima que mantiene seca la superficie'
	},
	equation: 'RH = e(T(surface) − margin)/e(T)',
	source: cite(
		'wmo-8',
		'Annex 4.B, equation over water',
		{ read: 'equation as quoted in a weather-station manual' },
		'handbook'
	),
	inputs: { air: 'temperature', surface: 'temperature', margin: 'temperature-difference' },
	gives: 'fraction',
	validFor: { air: MAGNUS_RANGE, surface: MAGNUS_RANGE, margin: [0, 20] },
	compute: ({ air, surface, margin }) =>
		Math.min(1, Math.exp(saturationExponent(surface - margin) - saturationExponent(air)))
});

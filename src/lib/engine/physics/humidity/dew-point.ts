import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { MAGNUS_RANGE, saturationExponent, temperatureOfExponent } from './magnus';

/**
 * Temperature at which the water in this air starts to condense.
 *   γ = ln(RH) + A·T / (B + T),  Td = B·γ / (A − γ)   (T, Td in °C, RH as a fraction)
 */
export const dewPoint = defineFormula({
	id: 'dew-point',
	title: { en: 'Dew point', es: 'Punto de rocío' },
	equation: 'Td = 243.12·γ/(17.62 − γ), γ = ln RH + 17.62·T/(243.12 + T) (°C)',
	source: cite(
		'wmo-8',
		'Annex 4.B, equation over water',
		{ read: 'equation as quoted in a weather-station manual' },
		'handbook'
	),
	inputs: { air: 'temperature', humidity: 'fraction' },
	gives: 'temperature',
	validFor: { air: MAGNUS_RANGE, humidity: [0.01, 1] },
	compute: ({ air, humidity }) => temperatureOfExponent(Math.log(humidity) + saturationExponent(air))
});

import { cite } from '../sources/provenance';
import { celsius } from '../units/construct';
import { defineFormula } from './formula';

const A = 17.62;
const B = 243.12;

/**
 * Temperature at which the water in this air starts to condense.
 *   γ = ln(RH) + A·T / (B + T),  Td = B·γ / (A − γ)   (T, Td in °C, RH as a fraction)
 */
export const dewPoint = defineFormula({
	id: 'dew-point',
	title: { en: 'Dew point', es: 'Punto de rocío' },
	equation: 'Td = 243.12·γ/(17.62 − γ), γ = ln RH + 17.62·T/(243.12 + T)',
	source: cite(
		'wmo-8',
		'Annex 4.B, equation over water',
		{ read: 'equation as quoted in a weather-station manual' },
		'handbook'
	),
	inputs: { air: 'temperature', humidity: 'fraction' },
	gives: 'temperature',
	validFor: { air: [celsius(-45), celsius(60)], humidity: [0.01, 1] },
	compute({ air, humidity }) {
		const t = air - 273.15;
		const gamma = Math.log(humidity) + (A * t) / (B + t);
		return celsius((B * gamma) / (A - gamma));
	}
});

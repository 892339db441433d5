import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { MAGNUS_RANGE, saturationExponent } from './magnus';

/**
 * Relative humidity of air whose dew point was measured, `dewPoint` read backwards. Throws a RangeError for a dew point
 * above the air's own temperature: such air does not exist, so one of the readings is wrong.
 */
export const humidityFromDewPoint = defineFormula({
	id: 'humidity-from-dew-point',
	title: { en: 'Relative humidity from the dew point', es: 'Humedad relativa según el punto de rocío' },
	equation: 'RH = e(Td)/e(T), ln e ∝ 17.62·t/(243.12 + t)',
	source: cite(
		'wmo-8',
		'Annex 4.B, equation over water',
		{ read: 'equation as quoted in a weather-station manual' },
		'handbook'
	),
	inputs: { air: 'temperature', dew: 'temperature' },
	gives: 'fraction',
	validFor: { air: MAGNUS_RANGE, dew: MAGNUS_RANGE },
	compute({ air, dew }) {
		if (dew > air)
			throw new RangeError(`humidity-from-dew-point: dew = ${dew} K must not be above air = ${air} K`);
		return Math.exp(saturationExponent(dew) - saturationExponent(air));
	}
});

import { cite } from '../../sources/provenance';
import { celsius, kelvin } from '../../units/construct';
import { defineFormula } from '../formula';
import { saturationPressure } from './saturation-pressure';

/** Molar mass of water over that of dry air. */
const WATER_TO_AIR = 0.621945;

const saturated = (temperature: number) => saturationPressure.at({ air: kelvin(temperature) });
const massRatio = (vapour: number, barometer: number) => (WATER_TO_AIR * vapour) / (barometer - vapour);

/**
 * Relative humidity from a dry and a wet thermometer in moving air. The wick must be wet with clean water and swung or
 * blown at 3 m/s or more, or it reads too warm and the air looks too humid. Not below freezing, where the wick is ice.
 * Barometer: the station's own pressure, not the one reduced to sea level; 101.3 kPa is good for low ground.
 * Throws a RangeError for readings that cannot stand together.
 */
export const humidityFromWetBulb = defineFormula({
	id: 'humidity-from-wet-bulb',
	title: { en: 'Relative humidity from the wet bulb', es: 'Humedad relativa según el bulbo húmedo' },
	equation:
		'W = ((2501 − 2.326·Tw)·Ws(Tw) − 1.006·(T − Tw))/(2501 + 1.86·T − 4.186·Tw), RH = p·W/(0.621945 + W)/e(T)',
	source: cite(
		'ashrae-fundamentals-2017',
		'ch. 1, eq. 20, 22 and 33',
		{ read: 'equations as carried out in an open-source psychrometrics library' },
		'handbook'
	),
	inputs: { air: 'temperature', wet: 'temperature', barometer: 'pressure' },
	gives: 'fraction',
	validFor: {
		air: [celsius(0.01), celsius(60)],
		wet: [celsius(0.01), celsius(60)],
		barometer: [60_000, 110_000]
	},
	compute({ air, wet, barometer }) {
		if (wet > air)
			throw new RangeError(`humidity-from-wet-bulb: wet = ${wet} K must not be above air = ${air} K`);
		const [dry, wick] = [air - 273.15, wet - 273.15];
		const latent = (2501 - 2.326 * wick) * massRatio(saturated(wet), barometer);
		const water = (latent - 1.006 * (dry - wick)) / (2501 + 1.86 * dry - 4.186 * wick);
		if (water < 0)
			throw new RangeError(
				`humidity-from-wet-bulb: wet = ${wet} K is below what the driest air of ${air} K could bring`
			);
		return (barometer * water) / (WATER_TO_AIR + water) / saturated(air);
	}
});

import psychrolib from 'psychrolib';
import { absoluteHumidity } from '../../src/lib/engine/physics/humidity/absolute-humidity';
import { highestHumidity } from '../../src/lib/engine/physics/humidity/highest-humidity';
import { humidityFromDewPoint } from '../../src/lib/engine/physics/humidity/humidity-from-dew-point';
import { humidityFromWetBulb } from '../../src/lib/engine/physics/humidity/humidity-from-wet-bulb';
import { celsius, degrees, pascal, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

psychrolib.SetUnitSystem(psychrolib.SI);
const read = 'library psychrolib 1.1.1, run in this test';
const apart = 'Magnus and ASHRAE equations differ by so much from 5 to 40 °C';
const SEA_LEVEL = 101_325;

/** Water over moist air, kg/m³. */
function water(degreesCelsius: number, humidity: number) {
	const ratio = psychrolib.GetHumRatioFromRelHum(degreesCelsius, humidity / 100, SEA_LEVEL);
	return (psychrolib.GetMoistAirDensity(degreesCelsius, ratio, SEA_LEVEL) * ratio) / (1 + ratio);
}

export default [
	published('psychrolib', 'relative humidity from the dew point', {
		of: ['humidity-from-dew-point'],
		unit: '%',
		read,
		within: { relative: 0.0025, because: apart },
		rows: (
			[
				[10, 2.5],
				[20, 12],
				[25, 5],
				[30, 21.4],
				[40, 27.6]
			] as const
		).map(([air, dew]) => ({
			where: `${air} °C, dew point ${dew} °C`,
			expected: 100 * psychrolib.GetRelHumFromTDewPoint(air, dew),
			actual: () => 100 * humidityFromDewPoint.at({ air: celsius(air), dew: celsius(dew) })
		}))
	}),
	published('psychrolib', 'relative humidity from the wet bulb', {
		of: ['humidity-from-wet-bulb'],
		unit: '%',
		read,
		within: { relative: 1e-9, because: 'both carry out the same equations in double precision' },
		rows: (
			[
				[15, 10, SEA_LEVEL],
				[22, 18, SEA_LEVEL],
				[30, 21, 101_000],
				[35, 20, 84_000],
				[40, 20, SEA_LEVEL]
			] as const
		).map(([air, wet, barometer]) => ({
			where: `${air} °C dry, ${wet} °C wet, ${barometer} Pa`,
			expected: 100 * psychrolib.GetRelHumFromTWetBulb(air, wet, barometer),
			actual: () =>
				100 *
				humidityFromWetBulb.at({
					air: celsius(air),
					wet: celsius(wet),
					barometer: pascal(barometer)
				})
		}))
	}),
	published('psychrolib', 'humidity at which a surface is 3 °C above the dew point', {
		of: ['highest-humidity'],
		unit: '%',
		read,
		within: { relative: 0.0025, because: apart },
		rows: (
			[
				[10, 10],
				[20, 20],
				[25, 20],
				[30, 28],
				[38, 25]
			] as const
		).map(([air, surface]) => ({
			where: `air ${air} °C, surface ${surface} °C`,
			expected: 100 * psychrolib.GetRelHumFromTDewPoint(air, surface - 3),
			actual: () =>
				100 * highestHumidity.at({ air: celsius(air), surface: celsius(surface), margin: degrees(3) })
		}))
	}),
	published('psychrolib', 'water in a cubic metre of air', {
		of: ['absolute-humidity'],
		unit: 'g/m³',
		read,
		within: { relative: 2e-4, because: 'the library rounds gas constant and molar masses to six digits' },
		rows: (
			[
				[5, 80],
				[20, 60],
				[25, 50],
				[35, 70],
				[50, 30]
			] as const
		).map(([air, humidity]) => ({
			where: `${air} °C, ${humidity} %`,
			expected: 1000 * water(air, humidity),
			actual: () => 1000 * absoluteHumidity.at({ air: celsius(air), humidity: percent(humidity) })
		}))
	})
];

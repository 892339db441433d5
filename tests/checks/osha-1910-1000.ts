import { mixtureExposure } from '../../src/lib/engine/physics/exposure/mixture-exposure';
import { timeWeightedAverage } from '../../src/lib/engine/physics/exposure/time-weighted-average';
import { hours } from '../../src/lib/engine/units/construct';
import type { Fraction, KilogramPerCubicMetre } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const read = 'paragraph (d) as printed by a code publisher';
const ppm = (...values: number[]) => values.map((value) => value / 1e6) as Fraction[];
const weights = (...values: number[]) => values.map((value) => value / 1e6) as KilogramPerCubicMetre[];
const durations = [hours(2), hours(2), hours(4)];

export default [
	published('osha-1910-1000', '(d)(1)(ii): the example of substance A', {
		of: ['time-weighted-average-share', 'time-weighted-average-mass'],
		unit: 'ppm',
		read,
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: '150, 75 and 50 ppm',
				expected: 81.25,
				actual: () => 1e6 * timeWeightedAverage.share.at({ concentrations: ppm(150, 75, 50), durations })
			},
			{
				where: 'the same numbers as mg/m³',
				expected: 81.25,
				actual: () => 1e6 * timeWeightedAverage.mass.at({ concentrations: weights(150, 75, 50), durations })
			}
		]
	}),
	published('osha-1910-1000', '(d)(2)(ii): the example of substances B, C and D', {
		of: ['mixture-exposure-share', 'mixture-exposure-mass'],
		unit: '1',
		read,
		within: { absolute: 0.0005, because: 'printed to three decimals' },
		rows: [
			{
				where: '500 of 1000, 45 of 200 and 40 of 200 ppm',
				expected: 0.925,
				actual: () =>
					mixtureExposure.share.at({ concentrations: ppm(500, 45, 40), limits: ppm(1000, 200, 200) }).sum
			},
			{
				where: 'the same numbers as mg/m³',
				expected: 0.925,
				actual: () =>
					mixtureExposure.mass.at({
						concentrations: weights(500, 45, 40),
						limits: weights(1000, 200, 200)
					}).sum
			},
			{
				where: 'is over the limit',
				expected: false,
				actual: () =>
					mixtureExposure.share.at({ concentrations: ppm(500, 45, 40), limits: ppm(1000, 200, 200) }).over
			}
		]
	})
];

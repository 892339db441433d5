import { mixtureExplosiveLimit } from '../../src/lib/engine/physics/solvent/mixture-explosive-limit';
import { mixtureExposure } from '../../src/lib/engine/physics/exposure/mixture-exposure';
import { timeWeightedAverage } from '../../src/lib/engine/physics/exposure/time-weighted-average';
import { minutes } from '../../src/lib/engine/units/construct';
import type { Fraction } from '../../src/lib/engine/units/dimension';
import { published } from './published';

const ppm = (value: number) => (value / 1e6) as Fraction;
const shares = (...values: number[]) => values as Fraction[];

/** Problem 3-14: mean concentration between two readings, ppm, and minutes between them. The lunch hour is left out. */
const SHIFT = [
	[110, 10],
	[120, 55],
	[136.5, 62],
	[152.5, 73],
	[154.31, 40],
	[155.04, 17],
	[158, 46],
	[162, 70],
	[159, 48],
	[141.5, 59]
] as const;

export default [
	published('crowl-safety', 'ch. 6, example: limit of hexane, methane and ethylene', {
		of: ['mixture-explosive-limit'],
		unit: '%',
		read: 'sample problem as held in an open chemical-properties library',
		within: { absolute: 0.005, because: 'printed to two decimals' },
		rows: [
			{
				where: '0.24, 0.61 and 0.15 of the vapour',
				expected: 2.75,
				actual: () =>
					100 *
					mixtureExplosiveLimit.at({
						shares: shares(0.24, 0.61, 0.15),
						limits: shares(0.012, 0.053, 0.031)
					})
			}
		]
	}),
	published('crowl-safety', 'ch. 3, problem 14: average over a day of readings', {
		of: ['time-weighted-average-share'],
		unit: 'ppm',
		read: 'solution in a university assignment',
		within: { absolute: 0.05, because: 'the solution rounds hours to three decimals' },
		rows: [
			{
				where: 'readings from 8:00 to 17:00',
				expected: 147.275,
				actual: () =>
					1e6 *
					timeWeightedAverage.share.at({
						concentrations: SHIFT.map(([concentration]) => ppm(concentration)),
						durations: SHIFT.map(([, spent]) => minutes(spent))
					})
			}
		]
	}),
	published('crowl-safety', 'ch. 3, problem: limit of a mixture over a liquid', {
		of: ['mixture-exposure-share'],
		unit: '1',
		read: 'solution in a university tutorial',
		within: { relative: 0.003, because: 'the limits of the parts are printed to three digits' },
		rows: [
			{
				where: 'heptane 30.4 of 400 ppm and toluene 18.5 of 20 ppm are the limit together',
				expected: 1,
				actual: () =>
					mixtureExposure.share.at({
						concentrations: [ppm(30.4), ppm(18.5)],
						limits: [ppm(400), ppm(20)]
					}).sum
			}
		]
	})
];

import { judgeArea } from '../../src/lib/engine/physics/readings/judge-area';
import { samplingPlan } from '../../src/lib/engine/physics/readings/sampling-plan';
import { spotLimits } from '../../src/lib/engine/physics/readings/spot-limits';
import { mils } from '../../src/lib/engine/units/construct';
import type { SquareMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

const plan = (squareFeet: number) =>
	samplingPlan.at({ coated: unitOf('area', 'ft²').toSi(squareFeet) as SquareMetre });
const inMils = (metres: number) => unitOf('length', 'mil').fromSi(metres);

/** One spot of five at this film, the rest at 10 mil. */
const accepted = (spot: number) =>
	judgeArea.at({
		readings: [spot, 10, 10, 10, 10].map((mil) => [mil, mil, mil].map(mils)),
		min: mils(8),
		max: mils(12)
	}).accepted;

export default [
	published('sspc-pa-2', '§8: how much to measure on 12 500 ft²', {
		of: ['sampling-plan'],
		unit: '',
		read: 'published example',
		within: { absolute: 0, because: 'counted' },
		rows: [
			{ where: 'areas', expected: 15, actual: () => plan(12_500).areas },
			{ where: 'spots', expected: 75, actual: () => plan(12_500).spots },
			{ where: 'readings', expected: 225, actual: () => plan(12_500).readings }
		]
	}),
	published('sspc-pa-2', '§9, Table 1: spot limits of 8 to 12 mil, level 3', {
		of: ['spot-minimum', 'spot-maximum'],
		unit: 'mil',
		read: 'published example',
		within: { absolute: 1e-9, because: 'exact shares of a printed number' },
		rows: [
			{ where: 'lowest', expected: 6.4, actual: () => inMils(spotLimits.lowest.at({ specified: mils(8) })) },
			{
				where: 'highest',
				expected: 14.4,
				actual: () => inMils(spotLimits.highest.at({ specified: mils(12) }))
			}
		]
	}),
	published('sspc-pa-2', '§9: what becomes of an area with one spot at or past those limits', {
		of: ['judge-area'],
		unit: '',
		read: 'published example of the limits',
		within: { absolute: 0, because: 'accepted or not' },
		rows: [
			{ where: 'a spot of 6.4', expected: true, actual: () => accepted(6.4) },
			{ where: 'a spot of 6.3', expected: false, actual: () => accepted(6.3) },
			{ where: 'a spot of 14.4', expected: true, actual: () => accepted(14.4) },
			{ where: 'a spot of 14.5', expected: false, actual: () => accepted(14.5) }
		]
	})
];

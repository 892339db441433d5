import { sampleDeviation, sampleMean } from '../../src/lib/engine/physics/sample-statistics';
import { published } from './published';

const NUM_ACC_1 = [10000001, 10000003, 10000002];

const MAVRO = [
	2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018,
	2.0019, 2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013, 2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014,
	2.0013, 2.0014, 2.0015, 2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022,
	2.0023, 2.0024, 2.0025, 2.0027, 2.0026, 2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024
];

const read = 'data and certified values as held in open-source test suites';

export default [
	published('nist-strd', 'certified means', {
		of: ['sample-mean'],
		unit: '',
		read,
		within: { relative: 1e-14, because: 'a mean loses next to nothing in double precision' },
		rows: [
			{ where: 'NumAcc1', expected: 10000002, actual: () => sampleMean(NUM_ACC_1) },
			{ where: 'Mavro', expected: 2.001856, actual: () => sampleMean(MAVRO) }
		]
	}),
	published('nist-strd', 'certified standard deviations', {
		of: ['sample-deviation'],
		unit: '',
		read,
		within: {
			relative: 1e-11,
			because: 'data near 2 that differ in the fifth digit keep eleven digits in double precision'
		},
		rows: [
			{ where: 'NumAcc1', expected: 1, actual: () => sampleDeviation(NUM_ACC_1) },
			{ where: 'Mavro', expected: 0.000429123454003053, actual: () => sampleDeviation(MAVRO) }
		]
	})
];

import { operatingCharacteristic, type SequentialPlan } from '$lib/learning';
import { published } from './published';

const plan: SequentialPlan = {
	p0: 0.04,
	p1: 0.1,
	alpha: 0.04,
	beta: 0.2,
	firstLook: 4,
	truncateAt: 75,
	passAtTruncation: null
};

const printed = [
	[0.02, 0.964, 0.001],
	[0.04, 0.769, 0.019],
	[0.06, 0.506, 0.108],
	[0.08, 0.291, 0.29],
	[0.1, 0.155, 0.516],
	[0.12, 0.079, 0.714],
	[0.14, 0.039, 0.851],
	[0.16, 0.02, 0.93]
] as const;

export default published('gsdesign', 'as_gt example: chance of each verdict when watching an adverse event', {
	of: ['proving'],
	unit: 'share',
	within: { absolute: 0.0005, because: 'three printed digits' },
	read: 'table kept with the tests of the R package (independent-test-as_gt)',
	rows: printed.flatMap(([rate, low, high]) => [
		{ where: `${rate}, low rate`, expected: low, actual: () => operatingCharacteristic(plan, rate).fail },
		{ where: `${rate}, high rate`, expected: high, actual: () => operatingCharacteristic(plan, rate).pass }
	])
});

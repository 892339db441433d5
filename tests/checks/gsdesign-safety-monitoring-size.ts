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
	[0.02, 34.8],
	[0.04, 46.4],
	[0.06, 54.3],
	[0.08, 56.1],
	[0.1, 52.8],
	[0.12, 46.8],
	[0.14, 40.2],
	[0.16, 34.2]
] as const;

export default published('gsdesign', 'as_gt example: mean number of trials when watching an adverse event', {
	of: ['proving'],
	unit: 'trials',
	within: { absolute: 0.05, because: 'one printed digit' },
	read: 'table kept with the tests of the R package (independent-test-as_gt)',
	rows: printed.map(([rate, expected]) => ({
		where: `${rate}`,
		expected,
		actual: () => operatingCharacteristic(plan, rate).mean
	}))
});

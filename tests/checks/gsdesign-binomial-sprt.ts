import { operatingCharacteristic, type SequentialPlan } from '$lib/learning';
import { published } from './published';

const plan: SequentialPlan = {
	p0: 0.1,
	p1: 0.35,
	alpha: 0.08,
	beta: 0.2,
	firstLook: 10,
	truncateAt: 25,
	passAtTruncation: null
};

const printed = [
	[0.1, 0.94, 0.04],
	[0.15, 0.78, 0.15],
	[0.2, 0.57, 0.32],
	[0.25, 0.37, 0.53],
	[0.3, 0.22, 0.71],
	[0.35, 0.12, 0.84],
	[0.4, 0.06, 0.92],
	[0.45, 0.03, 0.97]
] as const;

export default published(
	'gsdesign',
	'as_table example: chance of each verdict of a truncated sequential test',
	{
		of: ['proving'],
		unit: 'share',
		within: { absolute: 0.005, because: 'two printed digits' },
		read: 'as_table reference page of the R package',
		rows: printed.flatMap(([rate, low, high]) => [
			{ where: `${rate}, low`, expected: low, actual: () => operatingCharacteristic(plan, rate).fail },
			{ where: `${rate}, high`, expected: high, actual: () => operatingCharacteristic(plan, rate).pass }
		])
	}
);

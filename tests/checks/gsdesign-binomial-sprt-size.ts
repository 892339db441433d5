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
	[0.1, 12.1],
	[0.15, 13.6],
	[0.2, 14.3],
	[0.25, 14.2],
	[0.3, 13.4],
	[0.35, 12.5],
	[0.4, 11.6],
	[0.45, 11.0]
] as const;

export default published(
	'gsdesign',
	'as_table example: mean number of trials of a truncated sequential test',
	{
		of: ['proving'],
		unit: 'trials',
		within: { absolute: 0.05, because: 'one printed digit' },
		read: 'as_table reference page of the R package',
		rows: printed.map(([rate, expected]) => ({
			where: `${rate}`,
			expected,
			actual: () => operatingCharacteristic(plan, rate).mean
		}))
	}
);

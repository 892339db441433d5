import { expectedInformation, type Network } from '$lib/engine';
import { published } from './published';

/** Days with and without the game, in the two branches of an attribute. */
type Branch = readonly [yes: number, no: number];

/** Knowing the attribute tells about the game what a test of one cause tells about it. */
function gain([yes, no]: Branch, [otherYes, otherNo]: Branch): number {
	const [played, rested] = [yes + otherYes, no + otherNo];
	const network: Network = {
		causes: [{ id: 'game', prior: played / (played + rested), strength: 0.5 }],
		leak: 0.5,
		tests: []
	};
	const sensitivity = yes / played;
	return expectedInformation(
		network,
		{},
		{ id: 'attribute', of: ['game'], sensitivity, falseAlarm: no / rested }
	);
}

export default published(
	'mitchell-machine-learning',
	'Which attribute is the best classifier: information gain',
	{
		of: ['diagnosis'],
		unit: 'bit',
		read: 'figure and its sums as printed in lecture slides on decision trees',
		within: { absolute: 0.001, because: 'printed sums take entropies rounded to three decimals' },
		rows: [
			{
				where: 'all days, humidity: normal 6+ 1−, high 3+ 4−',
				expected: 0.151,
				actual: () => gain([6, 1], [3, 4])
			},
			{
				where: 'all days, wind: weak 6+ 2−, strong 3+ 3−',
				expected: 0.048,
				actual: () => gain([6, 2], [3, 3])
			},
			{
				where: 'sunny days, humidity: normal 2+ 0−, high 0+ 3−',
				expected: 0.97,
				actual: () => gain([2, 0], [0, 3])
			},
			{
				where: 'sunny days, wind: weak 1+ 2−, strong 1+ 1−',
				expected: 0.019,
				// .970 less (2/5)·1.0 less (3/5)·.918 is .0192 as printed; unrounded it is .0200
				actual: () => gain([1, 2], [1, 1])
			}
		]
	}
);

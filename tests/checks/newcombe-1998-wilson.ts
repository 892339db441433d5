import { wilsonInterval } from '$lib/learning';
import { published } from './published';

const printed = [
	[81, 263, 0.2553, 0.3662],
	[15, 148, 0.0624, 0.1605],
	[0, 20, 0, 0.1611],
	[1, 29, 0.0061, 0.1718],
	[29, 29, 0.883, 1]
] as const;

export default published('newcombe-1998', 'Table I, method 3: 95 % interval for a single proportion', {
	of: ['proving'],
	unit: 'share',
	within: { absolute: 0.00005, because: 'four printed digits' },
	read: 'the table rows as quoted, with citation, in test suites of public repositories; the paper itself not',
	rows: printed.flatMap(([right, n, low, high]) => [
		{ where: `${right}/${n}, low`, expected: low, actual: () => wilsonInterval(right, n).low },
		{ where: `${right}/${n}, high`, expected: high, actual: () => wilsonInterval(right, n).high }
	])
});

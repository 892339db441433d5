import { chanceOf, posterior, type Evidence, type Network } from '$lib/engine';
import { published } from './published';

/** One burglary and one earthquake in a thousand days; the alarm finds 99 % of one, 1 % of the other, errs once in 1000. */
const network: Network = {
	causes: [
		{ id: 'burglar', prior: 0.001, strength: 0.99 },
		{ id: 'earthquake', prior: 0.001, strength: 0.01 }
	],
	leak: 0.001,
	tests: []
};
const alarm: Evidence = { defect: true };

const joint = (burglar: boolean, earthquake: boolean) =>
	chanceOf(network, { ...alarm, causes: { burglar, earthquake } }) / chanceOf(network, alarm);

export default published('mackay-itila', 'Example 21.1: burglar alarm and earthquake, a noisy-OR', {
	of: ['diagnosis'],
	unit: '',
	// the rates of the example were read on a page of the book, the answers were not
	read: 'memory',
	within: {
		absolute: 0.0001,
		because: 'printed to four decimals that add up to 1.0000, so one is not the nearest'
	},
	rows: [
		{ where: 'neither, given the alarm', expected: 0.4993, actual: () => joint(false, false) },
		{ where: 'burglar alone, given the alarm', expected: 0.4947, actual: () => joint(true, false) },
		{ where: 'earthquake alone, given the alarm', expected: 0.0055, actual: () => joint(false, true) },
		{ where: 'both, given the alarm', expected: 0.0005, actual: () => joint(true, true) },
		{
			where: 'burglar, given the alarm and the earthquake',
			expected: 0.08,
			within: 0.005,
			actual: () => posterior(network, { ...alarm, causes: { earthquake: true } }).burglar!
		}
	]
});

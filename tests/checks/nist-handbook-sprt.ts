import { decisionLines } from '$lib/learning';
import { published } from './published';

// The handbook counts defectives, so the share that rises is p1 = 0.10 there and its acceptance line is our lower one.
const lines = () => decisionLines({ p0: 0.01, p1: 0.1, alpha: 0.05, beta: 0.1 });

export default published('nist-handbook', '6.2.6: lines of an item-by-item sequential plan', {
	of: ['proving'],
	unit: 'items',
	within: { absolute: 0.0005, because: 'three printed digits; the slope is printed to four' },
	read: 'memory',
	rows: [
		{ where: 'acceptance line, start', expected: -0.939, actual: () => lines().failIntercept },
		{ where: 'rejection line, start', expected: 1.205, actual: () => lines().passIntercept },
		{ where: 'both lines, slope', expected: 0.0397, actual: () => lines().slope }
	]
});

import { posterior, type Network } from '$lib/engine';
import { published } from './published';

const network: Network = {
	causes: [{ id: 'cancer', prior: 0.01, strength: 0.5 }],
	leak: 0.5,
	tests: [{ id: 'mammogram', of: ['cancer'], sensitivity: 0.8, falseAlarm: 0.1 }]
};

export default published('rice-statistics', 'Bayes’ rule: a positive mammogram', {
	of: ['diagnosis'],
	unit: '',
	read: 'example and its answer as quoted in a question on a mathematics site',
	within: { absolute: 0.0005, because: 'printed to three decimals' },
	rows: [
		{
			where: '1 % before, 80 % found, 10 % of the healthy blamed',
			expected: 0.075,
			actual: () => posterior(network, { results: { mammogram: true } }).cancer!
		}
	]
});

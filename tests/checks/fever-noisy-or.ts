import { chanceOf, type Network } from '$lib/engine';
import { published } from './published';

/** Each of the three fails to bring the fever about so often; nothing else brings it about. */
const network: Network = {
	causes: [
		{ id: 'cold', prior: 0.5, strength: 1 - 0.6 },
		{ id: 'flu', prior: 0.5, strength: 1 - 0.2 },
		{ id: 'malaria', prior: 0.5, strength: 1 - 0.1 }
	],
	leak: 0,
	tests: []
};

const feverWith = (cold: boolean, flu: boolean, malaria: boolean) => {
	const causes = { cold, flu, malaria };
	return chanceOf(network, { defect: true, causes }) / chanceOf(network, { causes });
};

export default published('fever-noisy-or', 'Noisy-OR of cold, flu and malaria: chance of fever', {
	of: ['diagnosis'],
	unit: '',
	read: 'table as printed in lecture slides of 2020',
	within: { absolute: 0.0005, because: 'printed to three decimals' },
	rows: (
		[
			['malaria', false, false, true, 0.9],
			['flu', false, true, false, 0.8],
			['flu and malaria', false, true, true, 0.98],
			['cold', true, false, false, 0.4],
			['cold and malaria', true, false, true, 0.94],
			['cold and flu', true, true, false, 0.88],
			['all three', true, true, true, 0.988]
		] as const
	).map(([where, cold, flu, malaria, expected]) => ({
		where,
		expected,
		actual: () => feverWith(cold, flu, malaria)
	}))
});

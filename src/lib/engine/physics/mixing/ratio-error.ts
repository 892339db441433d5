import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Relative error of the mixed ratio A:B itself; negative when there is too much B. */
export const ratioError = defineFormula({
	id: 'ratio-error',
	title: { en: 'Ratio error', es: 'Error de relación' },
	equation: 'error = r(mixed)/r(target) − 1',
	source: arithmetic('relative error'),
	inputs: { mixed: 'ratio', target: 'ratio' },
	gives: 'fraction',
	validFor: { mixed: [0.05, 1000], target: [0.05, 200] },
	compute: ({ mixed, target }) => mixed / target - 1
});

import { decide, type SequentialPlan, type VerdictState } from '$lib/learning';
import { published } from './published';

const response: SequentialPlan = {
	p0: 0.1,
	p1: 0.35,
	alpha: 0.08,
	beta: 0.2,
	firstLook: 10,
	truncateAt: 25,
	passAtTruncation: null
};

const rash: SequentialPlan = {
	p0: 0.04,
	p1: 0.1,
	alpha: 0.04,
	beta: 0.2,
	firstLook: 4,
	truncateAt: 75,
	passAtTruncation: null
};

const counts = (plan: SequentialPlan, n: number, state: VerdictState) =>
	Array.from({ length: n + 1 }, (_, right) => right).filter(
		(right) => decide(plan, n, right).state === state
	);

const most = (plan: SequentialPlan, n: number) => Math.max(...counts(plan, n, 'failed'));
const least = (plan: SequentialPlan, n: number) => Math.min(...counts(plan, n, 'passed'));

export default published('gsdesign', 'vignette Binomial SPRT: counts at which the two examples stop', {
	of: ['proving'],
	unit: 'trials',
	within: { absolute: 0, because: 'whole numbers' },
	read: 'vignettes/binomialSPRTExample.Rmd of the R package',
	rows: [
		{ where: 'response, 10, most that stop low', expected: 1, actual: () => most(response, 10) },
		{ where: 'response, 10, fewest that stop high', expected: 4, actual: () => least(response, 10) },
		{ where: 'response, 25, most that stop low', expected: 4, actual: () => most(response, 25) },
		{ where: 'response, 25, fewest that stop high', expected: 7, actual: () => least(response, 25) },
		{
			where: 'response, 25, fewest undecided',
			expected: 5,
			actual: () => Math.min(...counts(response, 25, 'undecided'))
		},
		{
			where: 'response, 25, most undecided',
			expected: 6,
			actual: () => Math.max(...counts(response, 25, 'undecided'))
		},
		{ where: 'rash, 25, most that stop low', expected: 0, actual: () => most(rash, 25) },
		{ where: 'rash, 40, most that stop low', expected: 1, actual: () => most(rash, 40) },
		{ where: 'rash, 4, fewest that stop high', expected: 4, actual: () => least(rash, 4) },
		{ where: 'rash, 14, fewest that stop high', expected: 4, actual: () => least(rash, 14) },
		{ where: 'rash, 15, fewest that stop high', expected: 5, actual: () => least(rash, 15) },
		{ where: 'rash, 29, fewest that stop high', expected: 5, actual: () => least(rash, 29) }
	]
});

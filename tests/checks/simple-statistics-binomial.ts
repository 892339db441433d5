import { binomialDistribution } from 'simple-statistics';
import { chanceOfClearing, defaultScheme } from '$lib/learning';
import { published } from './published';

const { safety } = defaultScheme;

/** Chance of exactly `misses` in `drills`, from the library. */
function chance(misses: number, drills: number, rate: number): number {
	const value = binomialDistribution(drills, 1 - rate)?.[misses];
	if (value === undefined) throw new Error('the library gave no such chance');
	return value;
}

// No miss in the clean run, or exactly one in it and none in the rest of the longer run.
const clears = (rate: number) =>
	chance(0, safety.cleanRun, rate) +
	chance(1, safety.cleanRun, rate) * chance(0, safety.oneMissRun - safety.cleanRun, rate);

export default published('simple-statistics', 'binomial distribution: the two stages of the safety gate', {
	of: ['proving'],
	unit: 'share',
	within: { relative: 1e-9, because: 'the same sum in double precision' },
	read: 'version 7.12.1 as installed',
	rows: [0.8, 0.9, 0.95, 0.98, 0.99].map((rate) => ({
		where: `${rate} clear`,
		expected: clears(rate),
		actual: () => chanceOfClearing(safety, rate)
	}))
});

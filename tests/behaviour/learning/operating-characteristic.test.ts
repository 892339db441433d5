import { describe, expect, it } from 'vitest';
import {
	defaultScheme,
	drillsNeeded,
	operatingCharacteristic,
	shortestTruncation,
	verdict,
	type SequentialPlan
} from '$lib/learning';

const plan = defaultScheme.sequential;

describe('the shipped plan', () => {
	it.each([
		[0.5, 0.0004, 6.63, 5, 11],
		[0.6, 0.0045, 9.42, 7, 17],
		[0.7, 0.0489, 15.35, 12, 33],
		[0.75, 0.1428, 19.84, 17, 44],
		[0.8, 0.3479, 23.99, 22, 45],
		[0.85, 0.6541, 25.12, 23, 45],
		[0.9, 0.9089, 21.65, 17, 39],
		[0.95, 0.9935, 16.09, 12, 23],
		[0.98, 0.9997, 13.37, 12, 17]
	])('at %f right: passes %f, %f drills on average', (rate, pass, mean, median, ninetieth) => {
		const characteristic = operatingCharacteristic(plan, rate);
		expect(characteristic.pass).toBeCloseTo(pass, 4);
		expect(characteristic.mean).toBeCloseTo(mean, 2);
		expect(drillsNeeded(characteristic, 0.5)).toBe(median);
		expect(drillsNeeded(characteristic, 0.9)).toBe(ninetieth);
	});

	it('keeps to both risks exactly', () => {
		expect(operatingCharacteristic(plan, plan.p0).pass).toBeLessThanOrEqual(plan.alpha);
		expect(operatingCharacteristic(plan, plan.p1).fail).toBeLessThanOrEqual(plan.beta);
	});

	it('is the shortest that does', () => {
		const { p0, p1, alpha, beta } = plan;
		expect(shortestTruncation({ p0, p1, alpha, beta }, 60)).toEqual(plan);
		expect(shortestTruncation({ p0, p1, alpha, beta }, plan.truncateAt - 1)).toBeNull();
	});
});

describe('counting paths', () => {
	const short: SequentialPlan = {
		p0: 0.3,
		p1: 0.8,
		alpha: 0.15,
		beta: 0.2,
		firstLook: 2,
		truncateAt: 9,
		passAtTruncation: null
	};

	it.each([0, 0.2, 0.55, 0.9, 1])('agrees with walking through every possible run, at %f right', (rate) => {
		const walked = { passed: 0, failed: 0, undecided: 0, open: 0 };
		let mean = 0;
		for (let run = 0; run < 2 ** short.truncateAt; run += 1) {
			const outcomes = Array.from({ length: short.truncateAt }, (_, drill) => ((run >> drill) & 1) === 1);
			const chance = outcomes.reduce((product, right) => product * (right ? rate : 1 - rate), 1);
			const { state, n } = verdict(short, outcomes);
			walked[state] += chance;
			mean += n * chance;
		}
		const counted = operatingCharacteristic(short, rate);
		expect(walked.open).toBe(0);
		expect(counted.pass).toBeCloseTo(walked.passed, 12);
		expect(counted.fail).toBeCloseTo(walked.failed, 12);
		expect(counted.undecided).toBeCloseTo(walked.undecided, 12);
		expect(counted.mean).toBeCloseTo(mean, 12);
	});

	it('really leaves some of those runs undecided', () =>
		expect(operatingCharacteristic(short, 0.55).undecided).toBeGreaterThan(0.01));

	it.each([-0.1, 1.1, NaN])('refuses %f as a share', (rate) =>
		expect(() => operatingCharacteristic(plan, rate)).toThrow(RangeError)
	);

	it.each([0, 1.2, NaN])('refuses %f as a share of runs', (share) =>
		expect(() => drillsNeeded(operatingCharacteristic(plan, 0.9), share)).toThrow(RangeError)
	);

	it('has all runs ended by the last drill', () =>
		expect(drillsNeeded(operatingCharacteristic(plan, 0.85), 1)).toBe(45));
});

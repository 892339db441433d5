import { describe, expect, it } from 'vitest';
import { chanceOfClearing, cleanRunFor, defaultScheme, safetyGate, type SafetyStep } from '$lib/learning';

const plan = defaultScheme.safety;
const clear = (n: number) => Array<SafetyStep>(n).fill('clear');
const stopped: SafetyStep[] = ['miss', 'miss'];
const gate = (...steps: SafetyStep[]) => safetyGate(plan, steps);

describe('the safety gate', () => {
	it('is open at first', () => expect(gate()).toMatchObject({ state: 'open', drills: 0, misses: 0 }));

	it('passes at 32 without a miss and not before', () => {
		expect(gate(...clear(31)).state).toBe('open');
		expect(gate(...clear(32)).state).toBe('passed');
	});

	it.each([0, 10, 31])('with one miss after %i drills goes on to 52', (before) => {
		const steps = [...clear(before), 'miss' as const, ...clear(50 - before)];
		expect(gate(...steps)).toMatchObject({ state: 'open', drills: 51, misses: 1 });
		expect(gate(...steps, 'clear')).toMatchObject({ state: 'passed', drills: 52, misses: 1 });
	});

	it('stops at the second miss, even at the last drill', () => {
		expect(gate('miss', ...clear(50), 'miss').state).toBe('stopped');
		expect(gate('miss', 'clear', 'miss').state).toBe('stopped');
	});

	it('counts nothing while stopped', () =>
		expect(gate(...stopped, ...clear(100))).toMatchObject({ state: 'stopped', drills: 2, misses: 2 }));

	it('begins anew after the safety lessons', () => {
		expect(gate(...stopped, 'lessons-redone')).toMatchObject({
			state: 'open',
			drills: 0,
			misses: 0,
			restartsUsed: 1
		});
		expect(gate(...stopped, 'lessons-redone', ...clear(32)).state).toBe('passed');
	});

	it('keeps the one miss when the lessons are done again without being stopped', () =>
		expect(gate('miss', 'lessons-redone', ...clear(31))).toMatchObject({ state: 'open', misses: 1 }));

	it('closes when its restarts are used up, and only a new application opens it', () => {
		const used: SafetyStep[] = [...stopped, 'lessons-redone', ...stopped, 'lessons-redone', ...stopped];
		expect(gate(...used)).toMatchObject({ state: 'closed', restartsUsed: 2 });
		expect(gate(...used, 'lessons-redone', ...clear(32)).state).toBe('closed');
		expect(gate(...used, 'new-application')).toMatchObject({ state: 'open', restartsUsed: 0 });
	});

	it('stands once passed and counts what comes after', () =>
		expect(gate(...clear(32), 'miss', 'clear', 'miss', 'lessons-redone')).toMatchObject({
			state: 'passed',
			misses: 0,
			missesSincePass: 2
		}));
});

describe('the chance of clearing it', () => {
	it.each([0.5, 0.9, 0.95, 0.99, 1])('is that of the two stages, at %f', (rate) =>
		expect(chanceOfClearing(plan, rate)).toBeCloseTo(rate ** 32 + 32 * (1 - rate) * rate ** 51, 12)
	);

	it('is below one in twenty at 90 %, and 92 % for a 99 % person', () => {
		expect(chanceOfClearing(plan, 0.9)).toBeCloseTo(0.04918, 5);
		expect(chanceOfClearing(plan, 0.99)).toBeCloseTo(0.917, 3);
	});

	it('grows with every try', () => {
		const once = chanceOfClearing(plan, 0.9);
		expect(chanceOfClearing(plan, 0.9, 3)).toBeCloseTo(1 - (1 - once) ** 3, 12);
	});

	it.each([-0.1, 1.01, NaN])('refuses %f as a share', (rate) =>
		expect(() => chanceOfClearing(plan, rate)).toThrow(RangeError)
	);

	it('agrees with walking the gate itself through every run of a small one', () => {
		const small = { cleanRun: 4, oneMissRun: 7, restarts: 0 };
		let walked = 0;
		for (let run = 0; run < 2 ** 7; run += 1) {
			const steps = Array.from({ length: 7 }, (_, i) => ((run >> i) & 1 ? 'miss' : 'clear') as SafetyStep);
			const chance = steps.reduce((product, step) => product * (step === 'clear' ? 0.8 : 0.2), 1);
			if (safetyGate(small, steps).state === 'passed') walked += chance;
		}
		expect(chanceOfClearing(small, 0.8)).toBeCloseTo(walked, 12);
	});
});

describe('a run without a failure', () => {
	it.each([
		[0.95, 0.9, 29],
		[0.95, 0.95, 59],
		[0.9, 0.9, 22],
		[0.95, 0.99, 299],
		[0.75, 0.5, 2]
	])('at %f confidence for %f takes %i', (confidence, rate, n) => {
		expect(cleanRunFor(confidence, rate)).toBe(n);
		expect(rate ** n).toBeLessThanOrEqual(1 - confidence);
		expect(rate ** (n - 1)).toBeGreaterThan(1 - confidence);
	});

	it.each([
		[0, 0.9],
		[0.95, 1],
		[1, 0.9]
	])('refuses %f and %f', (confidence, rate) =>
		expect(() => cleanRunFor(confidence, rate)).toThrow(RangeError)
	);
});

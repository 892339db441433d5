import { describe, expect, it } from 'vitest';
import { eloStep, expectedRight, firstDifficulty, type Rating } from '$lib/learning';

const rated = (value: number, answers = 0): Rating => ({ value, answers });

/** Both sides after each answer; they have answered alike often, as where a person and a job only ever meet each other. */
function after(skill: number, difficulty: number, answers: string) {
	let both = { skill: rated(skill), job: rated(difficulty) };
	return [...answers].map((answer) => (both = eloStep(both.skill, both.job, answer === '1')));
}

describe('one answer', () => {
	it('of the same weight whatever came before', () => {
		const { skill, job } = eloStep(rated(0), rated(0), true, { a: 0.4, b: 0 });
		expect([skill.value, job.value]).toEqual([0.2, -0.2]);
	});

	it('that surprises moves both sides far', () => {
		const { skill, job } = eloStep(rated(1), rated(0), false, { a: 0.4, b: 0 });
		expect(expectedRight(1, 0)).toBeCloseTo(0.731059, 6);
		expect(skill.value).toBeCloseTo(0.707577, 6);
		expect(job.value).toBeCloseTo(0.292423, 6);
	});

	it('weighs less the more there were, on each side by its own count', () => {
		const { skill, job } = eloStep(rated(0, 20), rated(0, 0), true);
		expect(skill).toEqual({ value: 0.25, answers: 21 });
		expect(job).toEqual({ value: -0.5, answers: 1 });
	});
});

it('goes through right, right, wrong, right as worked out by hand', () => {
	const steps = after(0, 0.5, '1101');
	for (const [at, value] of [0.622459, 0.929059, 0.205919, 0.659855].entries())
		expect(steps[at]!.skill.value).toBeCloseTo(value, 6);
	for (const [at, value] of [-0.122459, -0.429059, 0.294081, -0.159855].entries())
		expect(steps[at]!.job.value).toBeCloseTo(value, 6);
});

it('expects eight of ten of someone new in the narrowest jobs, and less the more there is to notice', () => {
	const expected = ([1, 2, 3] as const).map((breadth) => expectedRight(0, firstDifficulty(breadth)));
	expect(expected[0]).toBeCloseTo(0.8, 12);
	expect(expected[1]).toBeLessThan(expected[0]!);
	expect(expected[2]).toBeLessThan(expected[1]!);
	// the difficulty at which a skill of 0 gets 80 % right: ln(0.8 / 0.2) below it
	expect(firstDifficulty(1)).toBeCloseTo(-1.3863, 4);
});

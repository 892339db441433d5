import { describe, expect, it } from 'vitest';
import { eloStep, estimate, expectedAt, firstDifficulty } from '$lib/learning';
import { practised, rulesOf } from './practised';

const offer = (skill: 'C7' | 'C8' | 'C13', breadth: 1 | 2 | 3 = 1) => ({
	part: `part-${skill}`,
	skill,
	breadth
});

describe('an estimate from practice', () => {
	it('knows nothing of a new person but the first guess', () => {
		const state = estimate([]);
		expect(state).toMatchObject({ jobs: 0, lastSkill: undefined });
		expect(expectedAt(state, offer('C7'))).toBeCloseTo(0.8, 12);
	});

	it('moves a skill and the job it was met in, answer by answer', () => {
		const state = estimate([practised('C7'), practised('C7', false)]);
		const first = eloStep({ value: 0, answers: 0 }, { value: firstDifficulty(1), answers: 0 }, true);
		const second = eloStep(first.skill, first.job, false);
		expect(state.skills.get('C7')).toEqual({ ...second.skill, last: 1 });
		expect([...state.templates.values()]).toEqual([second.job]);
		expect(state).toMatchObject({ jobs: 2, lastSkill: 'C7' });
	});

	it('takes one broken rule of a skill for a wrong answer in that skill and in no other', () => {
		const [c7, c8] = [rulesOf('C7').slice(0, 3), rulesOf('C8').slice(0, 3)];
		const job = { part: 'both', breadth: 2, rules: [...c7, ...c8], findings: [c7[1]!] } as const;
		const { skills, lastSkill } = estimate([job]);
		expect(skills.get('C7')!.value).toBeLessThan(0);
		expect(skills.get('C8')!.value).toBeGreaterThan(0);
		expect(skills.get('C7')!.answers).toBe(1);
		expect(skills.size).toBe(2);
		expect(lastSkill).toBeUndefined();
	});

	it('judges a skill without rules of its own by the whole job', () => {
		expect(rulesOf('C13')).toEqual([]);
		const job = { part: 'part-C13', breadth: 1, skill: 'C13', rules: rulesOf('C9').slice(0, 2) } as const;
		expect(estimate([{ ...job, findings: [] }]).skills.get('C13')!.value).toBeGreaterThan(0);
		expect(estimate([{ ...job, findings: [job.rules[0]!] }]).skills.get('C13')!.value).toBeLessThan(0);
	});

	it('learns nothing from rules that are no more', () => {
		const job = {
			part: 'old',
			breadth: 1,
			rules: ['rule-of-long-ago'],
			findings: ['rule-of-long-ago']
		} as const;
		expect(estimate([job]).skills.size).toBe(0);
		expect(estimate([job]).jobs).toBe(1);
	});

	it('keeps breadths of a part apart, and lifts all of them by the skill', () => {
		const state = estimate([practised('C7')]);
		const before = estimate([]);
		for (const breadth of [1, 2, 3] as const)
			expect(expectedAt(state, offer('C7', breadth))).toBeGreaterThan(
				expectedAt(before, offer('C7', breadth))
			);
		expect(state.templates.size).toBe(1);
		expect(expectedAt(state, offer('C8'))).toBe(expectedAt(before, offer('C8')));
	});
});

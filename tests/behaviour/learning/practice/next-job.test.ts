import { describe, expect, it } from 'vitest';
import { estimate, expectedAt, nextJob, type PractisedJob } from '$lib/learning';
import type { Skill } from '$lib/engine';
import { offersOf, practised, rulesOf } from './practised';

const SKILLS = ['C7', 'C8', 'C9', 'C10', 'C11'] as const;
const offers = offersOf(...SKILLS);

/** A person who is always right, or never right in some skills, practises what is chosen. */
function practise(jobs: number, weak: readonly Skill[] = [], seed = 5) {
	const history: PractisedJob[] = [];
	const chosen = Array.from({ length: jobs }, (_, at) => {
		const job = nextJob(estimate(history), offers, seed + at)!;
		history.push(practised(job.skill, !weak.includes(job.skill), job.breadth));
		return job;
	});
	return chosen;
}

describe('the next job', () => {
	it('is one of the first skill on offer for the first three', () => {
		const chosen = practise(4);
		expect(chosen.map(({ because }) => because)).toEqual(['first', 'first', 'first', 'need']);
		expect(new Set(chosen.slice(0, 3).map(({ skill }) => skill))).toEqual(new Set(['C7']));
	});

	it('is never of the skill of the job before, once those three are done', () => {
		for (const weak of [[], ['C8'], ['C7', 'C11']] as Skill[][]) {
			const skills = practise(60, weak).map(({ skill }) => skill);
			for (let at = 3; at < skills.length; at += 1) expect(skills[at]).not.toBe(skills[at - 1]);
		}
	});

	it('is of the only skill on offer where there is no other', () => {
		const state = estimate([1, 2, 3, 4].map(() => practised('C7')));
		expect(nextJob(state, offersOf('C7'), 0)).toMatchObject({ skill: 'C7', because: 'need' });
	});

	it('goes back every fourth time to what was practised longest ago', () => {
		const chosen = practise(43, ['C10']);
		for (let at = 3; at < chosen.length; at += 1) {
			const back = (at - 3) % 4 === 3;
			expect(chosen[at]!.because).toBe(back ? 'retrieval' : 'need');
			if (!back) continue;
			const last = (skill: Skill) => chosen.slice(0, at).findLastIndex((job) => job.skill === skill);
			const met = SKILLS.filter((skill) => last(skill) >= 0 && skill !== chosen[at - 1]!.skill);
			expect(last(chosen[at]!.skill)).toBe(Math.min(...met.map(last)));
		}
	});

	it('is of the weakest skill otherwise, of those alike the one met least', () => {
		const base = [practised('C7'), practised('C7'), practised('C7')];
		const weakest = estimate([...base, practised('C9', false), practised('C8')]);
		expect(nextJob(weakest, offers, 0)).toMatchObject({ skill: 'C9', because: 'need' });
		// a right and a wrong answer that cancel out are still two answers
		const even = estimate(base);
		const met = new Map([...even.skills, ['C8' as const, { value: 0, answers: 2, last: 2 }]]);
		for (let seed = 0; seed < 12; seed += 1)
			expect(nextJob({ ...even, skills: met }, offers, seed)!.skill).not.toBe('C8');
	});

	it('of that skill is the one that should come out right about eight times in ten', () => {
		const wrong = { part: 'x', breadth: 1, rules: rulesOf('C8').slice(0, 1) } as const;
		const able = estimate([1, 2, 3].flatMap(() => [practised('C8'), practised('C9')]));
		const unable = estimate([1, 2, 3].map(() => ({ ...wrong, findings: wrong.rules })));
		for (const state of [estimate([]), able, unable]) {
			const job = nextJob({ ...state, jobs: 0 }, offersOf('C8'), 0)!;
			const off = offersOf('C8').map((offer) => Math.abs(expectedAt(state, offer) - 0.8));
			expect(Math.abs(job.expected - 0.8)).toBe(Math.min(...off));
			expect(job.expected).toBe(expectedAt(state, job));
		}
		expect(nextJob({ ...able, jobs: 0 }, offersOf('C8'), 0)!.breadth).toBeGreaterThan(1);
	});

	it('is the same for the same seed; the seed decides between equals only', () => {
		const state = estimate([practised('C7'), practised('C7'), practised('C7')]);
		const picks = Array.from({ length: 20 }, (_, seed) => nextJob(state, offers, seed)!);
		expect(Array.from({ length: 20 }, (_, seed) => nextJob(state, offers, seed)!)).toEqual(picks);
		expect(new Set(picks.map(({ skill }) => skill))).toEqual(new Set(['C8', 'C9', 'C10', 'C11']));
		expect(new Set(picks.map(({ breadth }) => breadth))).toEqual(new Set([1]));
	});

	it('is none where nothing is offered, and takes whole seeds only', () => {
		expect(nextJob(estimate([]), [], 1)).toBeUndefined();
		for (const seed of [-1, 0.5, Number.NaN])
			expect(() => nextJob(estimate([]), offers, seed)).toThrow(RangeError);
	});
});

import type { CompetencyId } from '$lib/learning';
import * as records from '$lib/records';
import { noConflict, words, type TestShop } from './test-shop';

export async function doLessons(shop: TestShop, person: string, area: string): Promise<void> {
	for (const lesson of [`${area}/one`, `${area}/two`])
		await shop.do(
			records.finishLesson,
			{ lesson, lessonVersion: 'v1', lang: 'es', tries: { 'check-1': 1, 'check-2': 3 } },
			person
		);
}

export async function openRun(
	shop: TestShop,
	person: string,
	competency: string,
	incident: string | null = null
) {
	const run = shop.id('run');
	await shop.do(records.openRun, { run, competency, incident }, person);
	return run;
}

export const ticket = (shop: TestShop, run: string, rules: string[] = ['some-rule']): records.IssueDrill => {
	const drill = shop.id('drill');
	return {
		run,
		drill,
		kind: 'whole-job',
		seed: drill,
		level: 2,
		engineVersion: '1',
		sheets: [{ sheet: 'sheet-a', revision: 1, hash: 'b'.repeat(64) }],
		shopValuesHash: 'c'.repeat(64),
		ticket: { part: 'bracket' },
		asked: ['mix.ratio'],
		rules,
		expected: { 'mix.ratio': [9, 9] }
	};
};

export async function issue(shop: TestShop, person: string, run: string, rules?: string[]): Promise<string> {
	const wish = ticket(shop, run, rules);
	await shop.do(records.issueDrill, wish, person);
	return wish.drill;
}

export const answer = (drill: string, right: boolean, safetyMisses: string[] = []): records.HandInDrill => ({
	drill,
	answers: { 'mix.ratio': right ? 9 : 8 },
	right,
	safetyMisses,
	findings: right ? [] : ['some-rule']
});

/** Works drills of a run until its verdict. */
export async function workThrough(
	shop: TestShop,
	person: string,
	run: string,
	right = true,
	rules?: string[]
) {
	for (let n = 0; n < 60; n += 1) {
		const drill = await issue(shop, person, run, rules);
		await shop.do(records.handInDrill, answer(drill, right), person);
		const { concluded } = shop.state.attempts.runs.get(run)!;
		if (concluded) return concluded;
	}
	throw new Error('no verdict after 60 drills');
}

export const practical = (
	shop: TestShop,
	person: string,
	competency: string,
	witness: string
): records.RecordPractical => ({
	practical: shop.id('practical'),
	person,
	competency,
	witness,
	takenAt: shop.now,
	sheet: { sheet: 'sheet-a', revision: 1, hash: 'b'.repeat(64) },
	panels: ['W1', 'W2'],
	instruments: [{ instrument: 'gauge-7', calibrationDue: '2026-12-31' }],
	gates: [{ gate: 'G1', seen: 'met', critical: true }],
	readings: [
		{ reading: 'film', unit: 'm', values: [20e-6, 21e-6], least: 15e-6, most: 25e-6, accepted: true }
	],
	result: 'accepted',
	reason: null,
	note: words(shop.id('t-note'))
});

export const signature = (shop: TestShop, person: string, competency: string): records.Sign => ({
	signOff: shop.id('signoff'),
	person,
	competency,
	conflict: noConflict,
	watchedBy: ['sup-1'],
	on: shop.today,
	reason: null
});

/** Clears the safety gate: a run in each of three competencies makes more than 32 clean drills. */
export async function clearSafety(shop: TestShop, person: string): Promise<void> {
	for (const competency of ['inspection', 'intake', 'mixing'])
		await workThrough(shop, person, await openRun(shop, person, competency));
}

/** Everything a signature needs, with the practical witnessed by `witness`. */
export async function makeReady(
	shop: TestShop,
	person: string,
	competency: CompetencyId,
	witness = 'lead-1'
) {
	await doLessons(shop, person, competency);
	await clearSafety(shop, person);
	if (!['inspection', 'intake', 'mixing'].includes(competency))
		await workThrough(shop, person, await openRun(shop, person, competency));
	await shop.do(records.recordPractical, practical(shop, person, competency, witness), witness);
}

/** A sign-off by the founding lead. Answers its id. */
export async function makeSigned(shop: TestShop, person: string, competency: CompetencyId): Promise<string> {
	await makeReady(shop, person, competency);
	const wish = signature(shop, person, competency);
	await shop.do(records.signOff, wish, 'lead-1');
	return wish.signOff;
}

export const standing = (shop: TestShop, person: string, competency: CompetencyId) =>
	records.certification(shop.state, person, competency, {
		now: shop.now,
		requirements: {
			lessonsOf: (area) => [`${area}/one`, `${area}/two`],
			holdsSafetySkill: (each) => each === 'curing'
		}
	});

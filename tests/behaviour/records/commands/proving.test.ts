import { describe, expect, test } from 'vitest';
import {
	erasePerson,
	finishLesson,
	giveUpDrill,
	handInDrill,
	handInPractice,
	issueDrill,
	lapseDrills,
	openRun,
	setScheme,
	startTraining,
	type Acting,
	type Json,
	type State
} from '$lib/records';
import { defaultScheme } from '$lib/learning';
import { codeOf, testShop, type TestShop } from '../test-shop';
import {
	answer,
	clearSafety,
	doLessons,
	issue,
	makeReady,
	openRun as begin,
	ticket,
	workThrough
} from '../working-towards';

const practice = (seed: string) => ({
	sheet: {
		attempt: `a-${seed}`,
		kind: 'whole-job',
		seed,
		level: 1,
		engineVersion: '1',
		shopValuesHash: 'c'.repeat(64),
		rules: ['some-rule'],
		answers: {},
		hints: 2,
		right: true,
		findings: []
	},
	first: { part: 'whole', support: 'full' as const, findings: [] }
});

const lapse = (state: State, _: null, acting: Acting) => lapseDrills(state, acting);

/** Works one drill and moves on by a minute. */
async function work(shop: TestShop, run: string, right: boolean, misses: string[] = [], person = 'trn-1') {
	const drill = await issue(shop, person, run);
	return shop.do(handInDrill, answer(drill, right, misses), person);
}

describe('a run to its verdict', () => {
	test('twelve right in a row pass at the twelfth drill, and not before', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		for (let n = 1; n < 12; n += 1) {
			const entries = await work(shop, run, true);
			expect(entries.map(({ event }) => event)).toEqual(['proving.handed-in']);
		}
		const last = await work(shop, run, true);
		expect(last.map(({ event, data }) => [event, data])[1]).toEqual([
			'proving.concluded',
			{ run, person: 'trn-1', verdict: 'passed', drills: 12, right: 12 }
		]);
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run), 'trn-1'))).toBe('run-concluded');
		expect(codeOf(shop.ask(openRun, { run: 'again', competency: 'curing', incident: null }, 'trn-1'))).toBe(
			'already-passed'
		);
	});

	test('wrong ones fail it, and everything follows in one act with the last answer', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		const verdict = await workThrough(shop, 'trn-1', run, false);
		expect(verdict).toMatchObject({ verdict: 'failed', right: 0 });
		const [answered, concluded] = shop.journal.entries.slice(-2);
		expect([answered?.event, answered?.more, concluded?.event, concluded?.more]).toEqual([
			'proving.handed-in',
			1,
			'proving.concluded',
			0
		]);
	});

	test('keeps the plan it was opened with when the scheme changes in between', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		const stricter = {
			...defaultScheme,
			sequential: { ...defaultScheme.sequential, alpha: 0.04, truncateAt: 60, passAtTruncation: 50 }
		} as unknown as Json;
		expect(codeOf(await shop.try(setScheme, { limits: stricter, effective: shop.today }, 'lead-1'))).toBe(
			'accepted'
		);
		expect(await workThrough(shop, 'trn-1', run)).toMatchObject({ verdict: 'passed', drills: 12 });
	});
});

describe('opening a run', () => {
	const wish = { run: 'r', competency: 'curing', incident: null };

	test('is for a trainee, in a competency there is, one at a time', async () => {
		const shop = await testShop();
		const ask = (changes: object, actor = 'trn-1') =>
			codeOf(shop.ask(openRun, { ...wish, ...changes }, actor));
		expect(ask({}, 'nobody')).toBe('unknown-person');
		expect(ask({ competency: 'safety' })).toBe('unknown-competency');
		expect(ask({ incident: 'none' })).toBe('no-refresher-due');
		const run = await begin(shop, 'trn-1', 'curing');
		expect(ask({})).toBe('run-open');
		expect(ask({ run, competency: 'mixing' })).toBe('id-taken');
		expect(ask({ competency: 'mixing' })).toBe('accepted');
	});

	test('after a failure waits for the days and for the lessons', async () => {
		const shop = await testShop();
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'), false);
		const ask = () => codeOf(shop.ask(openRun, wish, 'trn-1'));
		expect(ask()).toBe('retest-too-early');
		shop.pass({ days: 7 });
		expect(ask()).toBe('lessons-not-redone');
		await doLessons(shop, 'trn-1', 'curing');
		expect(ask()).toBe('accepted');
		const [opened] = await shop.do(openRun, wish, 'trn-1');
		expect(opened?.data).toMatchObject({ purpose: 'retest' });
	});

	test('ends after two retests, until a lead admits the person anew', async () => {
		const shop = await testShop();
		for (let sitting = 0; sitting < 3; sitting += 1) {
			await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'), false);
			shop.pass({ days: 8 });
			await doLessons(shop, 'trn-1', 'curing');
		}
		expect(codeOf(shop.ask(openRun, wish, 'trn-1'))).toBe('retests-used-up');
		const anew = { person: 'trn-1', area: 'curing', how: 'new-application' as const };
		expect(codeOf(shop.ask(startTraining, anew, 'lead-1'))).toBe('retest-too-early');
		shop.pass({ days: 30 });
		expect(codeOf(shop.ask(startTraining, anew, 'sup-1'))).toBe('not-allowed');
		await shop.do(startTraining, anew, 'lead-1');
		expect(codeOf(shop.ask(openRun, wish, 'trn-1'))).toBe('accepted');
	});
});

describe('issuing a ticket', () => {
	test('never repeats one the person met, practising or proving', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		const first = ticket(shop, run);
		await shop.do(issueDrill, first, 'trn-1');
		await shop.do(handInDrill, answer(first.drill, true), 'trn-1');
		await shop.do(handInPractice, practice('seen-in-practice'), 'trn-1');
		const ask = (seed: string) => codeOf(shop.ask(issueDrill, { ...ticket(shop, run), seed }, 'trn-1'));
		expect(ask(first.seed)).toBe('ticket-seen-before');
		expect(ask('seen-in-practice')).toBe('ticket-seen-before');
		expect(ask('fresh')).toBe('accepted');
	});

	test('is for the own run, with no other drill open', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		expect(codeOf(shop.ask(issueDrill, ticket(shop, 'no-run'), 'trn-1'))).toBe('unknown-run');
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run), 'trn-2'))).toBe('other-persons-run');
		const drill = await issue(shop, 'trn-1', run);
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run), 'trn-1'))).toBe('drill-open');
		await shop.do(handInDrill, answer(drill, true), 'trn-1');
		expect(codeOf(shop.ask(issueDrill, { ...ticket(shop, run), drill }, 'trn-1'))).toBe('id-taken');
	});
});

describe('the open drill', () => {
	test('closes lessons, practice and other runs to the person, and to nobody else', async () => {
		const shop = await testShop();
		await issue(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'));
		const lesson = { lesson: 'curing/one', lessonVersion: 'v1', lang: 'en' as const, tries: { a: 1 } };
		expect(codeOf(shop.ask(finishLesson, lesson, 'trn-1'))).toBe('drill-open');
		expect(codeOf(shop.ask(handInPractice, practice('p'), 'trn-1'))).toBe('drill-open');
		expect(codeOf(shop.ask(openRun, { run: 'r', competency: 'mixing', incident: null }, 'trn-1'))).toBe(
			'drill-open'
		);
		expect(codeOf(shop.ask(finishLesson, lesson, 'trn-2'))).toBe('accepted');
	});

	test('is answered once, by its own person', async () => {
		const shop = await testShop();
		const drill = await issue(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'));
		expect(codeOf(shop.ask(handInDrill, answer('ghost', true), 'trn-1'))).toBe('unknown-drill');
		expect(codeOf(shop.ask(handInDrill, answer(drill, true), 'trn-2'))).toBe('other-persons-run');
		expect(codeOf(shop.ask(giveUpDrill, { drill }, 'trn-2'))).toBe('other-persons-run');
		await shop.do(handInDrill, answer(drill, false), 'trn-1');
		expect(codeOf(shop.ask(handInDrill, answer(drill, true), 'trn-1'))).toBe('drill-settled');
		expect(codeOf(shop.ask(giveUpDrill, { drill }, 'trn-1'))).toBe('drill-settled');
	});

	test('is not right with a safety stop in it', async () => {
		const shop = await testShop();
		const drill = await issue(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'));
		expect(codeOf(shop.ask(handInDrill, answer(drill, true, ['gloves']), 'trn-1'))).toBe('malformed');
	});

	test('counts as wrong when given up: starting over wipes nothing', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		for (let n = 0; n < 2; n += 1) await work(shop, run, false);
		const drill = await issue(shop, 'trn-1', run);
		await shop.do(giveUpDrill, { drill }, 'trn-1');
		expect(shop.state.attempts.runs.get(run)?.concluded).toMatchObject({
			verdict: 'failed',
			drills: 3
		});
		expect(shop.state.attempts.drills.get(drill)?.settled).toMatchObject({ how: 'given-up', right: false });
	});

	test('rests across a day less a minute and lapses after 24 h, as announced', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		const drill = await issue(shop, 'trn-1', run);
		shop.pass({ hours: 23, minutes: 59 });
		expect(await shop.try(lapse, null, 'program')).toEqual({ ok: true, entries: [] });
		expect(codeOf(shop.ask(handInDrill, answer(drill, true), 'trn-1'))).toBe('accepted');
		shop.pass({ minutes: 1 });
		expect(codeOf(shop.ask(handInDrill, answer(drill, true), 'trn-1'))).toBe('drill-lapsed');
		await shop.try(lapse, null, 'program');
		expect(shop.state.attempts.drills.get(drill)?.settled).toMatchObject({ how: 'lapsed', right: false });
		expect(shop.state.attempts.open.size).toBe(0);
		expect(await shop.try(lapse, null, 'program')).toEqual({ ok: true, entries: [] });
	});

	test('lapses for somebody erased meanwhile too', async () => {
		const shop = await testShop();
		const drill = await issue(shop, 'trn-1', await begin(shop, 'trn-1', 'curing'));
		await shop.do(erasePerson, { person: 'trn-1' }, 'lead-1');
		expect(codeOf(shop.ask(handInDrill, answer(drill, true), 'trn-1'))).toBe('person-erased');
		expect(codeOf(shop.ask(giveUpDrill, { drill }, 'trn-1'))).toBe('person-erased');
		shop.pass({ days: 1 });
		await shop.try(lapse, null, 'program');
		expect(shop.state.attempts.open.size).toBe(0);
	});
});

describe('a lesson', () => {
	test('is done by oneself, with at least one check answered', async () => {
		const shop = await testShop();
		const wish = { lesson: 'curing/one', lessonVersion: 'v1', lang: 'en' as const, tries: { a: 2 } };
		expect(codeOf(shop.ask(finishLesson, wish, 'nobody'))).toBe('unknown-person');
		expect(codeOf(shop.ask(finishLesson, { ...wish, tries: {} }, 'trn-1'))).toBe('malformed');
		expect(codeOf(await shop.try(finishLesson, { ...wish, tries: { a: 0 } }, 'trn-1'))).toBe('malformed');
		await shop.do(finishLesson, wish, 'trn-1');
		expect(shop.state.lessons.get('trn-1')?.get('curing/one')).toEqual({
			lesson: 'curing/one',
			version: 'v1',
			lang: 'en',
			tries: { a: 2 },
			at: shop.now
		});
	});
});

describe('practice', () => {
	test('is kept and never counts', async () => {
		const shop = await testShop();
		for (let n = 0; n < 40; n += 1) await shop.do(handInPractice, practice(`s${n}`), 'trn-1');
		expect(shop.state.attempts.practice.get('trn-1')).toHaveLength(40);
		expect(shop.state.safety.get('trn-1')).toBeUndefined();
		expect(shop.state.attempts.runs.size).toBe(0);
		expect(codeOf(shop.ask(handInPractice, practice('s0'), 'trn-1'))).toBe('id-taken');
	});
});

describe('the safety gate', () => {
	const gate = (shop: TestShop) => shop.state.safety.get('trn-1')?.concluded?.verdict;
	const lesson = (name: string) => ({
		lesson: name,
		lessonVersion: 'v1',
		lang: 'en' as const,
		tries: { a: 1 }
	});

	test('is passed by 32 clean drills over all competencies, at the 32nd', async () => {
		const shop = await testShop();
		await clearSafety(shop, 'trn-1');
		const concluded = shop.journal.entries.filter(({ event }) => event === 'safety.concluded');
		expect(concluded.map(({ data }) => data)).toEqual([
			{ person: 'trn-1', verdict: 'passed', drills: 32, misses: 0 }
		]);
	});

	test('stops proving at the second miss, until the safety lessons are all done again', async () => {
		const shop = await testShop();
		await doLessons(shop, 'trn-1', 'safety');
		const run = await begin(shop, 'trn-1', 'curing');
		await work(shop, run, false, ['respirator']);
		expect(gate(shop)).toBeUndefined();
		const entries = await work(shop, run, false, ['respirator']);
		expect(entries.map(({ event }) => event)).toEqual(['proving.handed-in', 'safety.concluded']);
		expect(gate(shop)).toBe('stopped');
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run), 'trn-1'))).toBe('safety-stopped');
		expect(codeOf(shop.ask(openRun, { run: 'r', competency: 'mixing', incident: null }, 'trn-1'))).toBe(
			'safety-stopped'
		);

		await shop.do(finishLesson, lesson('safety/one'), 'trn-1');
		expect(gate(shop)).toBe('stopped');
		const last = await shop.do(finishLesson, lesson('safety/two'), 'trn-1');
		expect(last.map(({ event }) => event)).toEqual(['lesson.done', 'safety.restarted']);
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run), 'trn-1'))).toBe('accepted');
	});

	test('a drill that was left is a miss: walking away wipes nothing out', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		for (let n = 0; n < 2; n += 1)
			await shop.do(giveUpDrill, { drill: await issue(shop, 'trn-1', run) }, 'trn-1');
		expect(gate(shop)).toBe('stopped');
	});

	test('doing the safety lessons again while it is open does not wipe out the one miss', async () => {
		const shop = await testShop();
		const run = await begin(shop, 'trn-1', 'curing');
		await work(shop, run, false, ['respirator']);
		await doLessons(shop, 'trn-1', 'safety');
		await work(shop, run, false, ['respirator']);
		expect(gate(shop)).toBe('stopped');
	});

	test('closes when its tries are used up, until a lead admits the person anew', async () => {
		const shop = await testShop();
		const competencies = ['curing', 'mixing', 'intake'];
		for (const competency of competencies) {
			const run = await begin(shop, 'trn-1', competency);
			await work(shop, run, false, ['respirator']);
			await work(shop, run, false, ['respirator']);
			await doLessons(shop, 'trn-1', 'safety');
		}
		const ask = () =>
			codeOf(shop.ask(openRun, { run: 'r', competency: 'spraying', incident: null }, 'trn-1'));
		expect(ask()).toBe('safety-stopped');
		const anew = { person: 'trn-1', area: 'safety', how: 'new-application' as const };
		expect(codeOf(shop.ask(startTraining, anew, 'sup-1'))).toBe('not-allowed');
		await shop.do(startTraining, anew, 'lead-1');
		expect(ask()).toBe('accepted');
		expect(codeOf(shop.ask(startTraining, anew, 'lead-1'))).toBe('wrong-state');
	});

	test('a pass stands when the plan is made longer later', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'mixing');
		const longer = { ...defaultScheme, safety: { ...defaultScheme.safety, cleanRun: 60, oneMissRun: 100 } };
		await shop.do(setScheme, { limits: longer as unknown as Json, effective: shop.today }, 'lead-1');
		expect(codeOf(shop.ask(openRun, { run: 'r', competency: 'spraying', incident: null }, 'trn-1'))).toBe(
			'accepted'
		);
		expect(gate(shop)).toBe('passed');
	});
});

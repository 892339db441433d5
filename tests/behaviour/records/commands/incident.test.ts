import { describe, expect, test } from 'vitest';
import {
	closeIncident,
	decideIncident,
	issueDrill,
	openRun,
	recordCause,
	recordPractical,
	refreshersDue,
	reportIncident,
	signOff,
	signRefresher
} from '$lib/records';
import { codeOf, noConflict, testShop, words, type TestShop } from '../test-shop';
import {
	doLessons,
	makeSigned,
	openRun as begin,
	practical,
	signature,
	standing,
	ticket,
	workThrough
} from '../working-towards';

const report = (incident = 'inc-1', person = 'trn-1') => ({
	incident,
	defect: 'solvent-pop',
	job: 'WO-88',
	person,
	conditions: { air: 295 },
	note: words('t-seen')
});

const gap = (rules = ['mix.ratio']) => ({
	incident: 'inc-1',
	evidence: words('t-ev'),
	cause: 'skill-gap' as const,
	competency: 'mixing',
	rules
});

const system = {
	incident: 'inc-1',
	evidence: words('t-ev'),
	cause: 'system' as const,
	action: words('t-act')
};

const closing = { incident: 'inc-1', jobsChecked: 30, repeats: 0, note: null };

async function decidedGap(): Promise<TestShop> {
	const shop = await testShop();
	await makeSigned(shop, 'trn-1', 'mixing');
	await shop.do(reportIncident, report(), 'lead-1');
	await shop.do(decideIncident, gap(), 'lead-1');
	return shop;
}

describe('reporting', () => {
	test('is for a supervisor, changes nothing for anybody, and has an id of its own', async () => {
		const shop = await testShop();
		await makeSigned(shop, 'trn-1', 'mixing');
		expect(codeOf(shop.ask(reportIncident, report(), 'trn-2'))).toBe('not-allowed');
		expect(codeOf(shop.ask(reportIncident, report('inc-1', 'ghost'), 'sup-1'))).toBe('unknown-person');
		await shop.do(reportIncident, report(), 'sup-1');
		expect(codeOf(shop.ask(reportIncident, report(), 'sup-1'))).toBe('id-taken');
		expect(standing(shop, 'trn-1', 'mixing').mayWorkAlone).toBe(true);
	});
});

describe('deciding', () => {
	test('is done once, on a known incident, and not about oneself', async () => {
		const shop = await testShop();
		await shop.do(reportIncident, report(), 'sup-1');
		await shop.do(reportIncident, report('inc-2', 'sup-1'), 'sup-2');
		expect(codeOf(shop.ask(decideIncident, system, 'trn-2'))).toBe('not-allowed');
		expect(codeOf(shop.ask(decideIncident, { ...system, incident: 'ghost' }, 'sup-1'))).toBe(
			'unknown-incident'
		);
		expect(codeOf(shop.ask(decideIncident, { ...system, incident: 'inc-2' }, 'sup-1'))).toBe('own-record');
		await shop.do(decideIncident, system, 'sup-1');
		expect(codeOf(shop.ask(decideIncident, gap(), 'sup-1'))).toBe('incident-decided');
	});

	test('takes test results until then', async () => {
		const shop = await testShop();
		await shop.do(reportIncident, report(), 'sup-1');
		const cause = { incident: 'inc-1', test: 'rub', found: 'yes' as const, rules: ['mix.ratio'], note: null };
		expect(codeOf(shop.ask(recordCause, cause, 'trn-1'))).toBe('not-allowed');
		expect(codeOf(shop.ask(recordCause, { ...cause, incident: 'ghost' }, 'sup-1'))).toBe('unknown-incident');
		await shop.do(recordCause, cause, 'sup-1');
		expect(shop.state.incidents.get('inc-1')?.tests).toMatchObject([{ test: 'rub', by: 'sup-1' }]);
		await shop.do(decideIncident, system, 'sup-1');
		expect(codeOf(shop.ask(recordCause, cause, 'sup-1'))).toBe('incident-decided');
	});

	test('a system cause has an action and no refresher', async () => {
		const shop = await testShop();
		await makeSigned(shop, 'trn-1', 'mixing');
		await shop.do(reportIncident, report(), 'sup-1');
		await shop.do(decideIncident, system, 'sup-1');
		expect(refreshersDue(shop.state, 'trn-1')).toEqual([]);
		expect(standing(shop, 'trn-1', 'mixing').mayWorkAlone).toBe(true);
		expect(codeOf(shop.ask(closeIncident, closing, 'sup-1'))).toBe('accepted');
	});

	test('a skill gap names a competency and its rules', async () => {
		const shop = await testShop();
		await shop.do(reportIncident, report(), 'sup-1');
		expect(codeOf(shop.ask(decideIncident, { ...gap(), competency: 'safety' }, 'sup-1'))).toBe(
			'unknown-competency'
		);
		expect(codeOf(await shop.try(decideIncident, gap([]), 'sup-1'))).toBe('malformed');
	});
});

describe('a refresher', () => {
	test('limits to supervised work in that competency; the sign-off itself is untouched', async () => {
		const shop = await decidedGap();
		const { standing: state, mayWorkAlone, refreshers } = standing(shop, 'trn-1', 'mixing');
		expect([state.state, mayWorkAlone, refreshers.map(({ rules }) => rules)]).toEqual([
			'signed',
			false,
			[['mix.ratio']]
		]);
		expect(standing(shop, 'trn-1', 'curing').refreshers).toEqual([]);
		expect(shop.journal.entries.some(({ event }) => event === 'signoff.suspended')).toBe(false);
	});

	test('is proven on tickets that hold its rules, then signed, and then over', async () => {
		const shop = await decidedGap();
		const sign = () => ({ incident: 'inc-1', conflict: noConflict, watchedBy: [], on: shop.today });
		expect(shop.ask(signRefresher, sign(), 'lead-1')).toMatchObject({
			refusal: { code: 'parts-missing', detail: ['verdict'] }
		});
		const run = await begin(shop, 'trn-1', 'mixing', 'inc-1');
		expect(shop.state.attempts.runs.get(run)).toMatchObject({ purpose: 'refresher', rules: ['mix.ratio'] });
		expect(codeOf(shop.ask(issueDrill, ticket(shop, run, ['other-rule']), 'trn-1'))).toBe(
			'rules-not-covered'
		);
		await workThrough(shop, 'trn-1', run, true, ['mix.ratio', 'other-rule']);
		expect(standing(shop, 'trn-1', 'mixing').mayWorkAlone).toBe(false);
		expect(codeOf(shop.ask(openRun, { run: 'r', competency: 'mixing', incident: 'inc-1' }, 'trn-1'))).toBe(
			'already-passed'
		);

		const before = shop.state.signOffs.byId.values().next().value!;
		const dates = [before.validUntil, before.confirmBy];
		expect(codeOf(shop.ask(signRefresher, sign(), 'trn-2'))).toBe('not-allowed');
		expect(codeOf(shop.ask(signRefresher, sign(), 'sup-1'))).toBe('not-signed-for-it');
		expect(codeOf(shop.ask(signRefresher, { ...sign(), on: '2026-03-01' }, 'lead-1'))).toBe('backdated');
		expect(codeOf(shop.ask(signRefresher, { ...sign(), watchedBy: ['ghost'] }, 'lead-1'))).toBe(
			'unknown-person'
		);
		expect(codeOf(shop.ask(signRefresher, { ...sign(), incident: 'ghost' }, 'lead-1'))).toBe(
			'unknown-incident'
		);
		await shop.do(signRefresher, sign(), 'lead-1');
		expect(standing(shop, 'trn-1', 'mixing').mayWorkAlone).toBe(true);
		expect([before.validUntil, before.confirmBy]).toEqual(dates);
		expect(codeOf(shop.ask(signRefresher, sign(), 'lead-1'))).toBe('no-refresher-due');
	});

	test('a passed refresher run is no evidence towards a sign-off, nor the other way round', async () => {
		const shop = await decidedGap();
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing', 'inc-1'), true, ['mix.ratio']);
		expect(standing(shop, 'trn-1', 'mixing').evidence.verdict).toBe('open');
		const other = await decidedGap();
		await workThrough(other, 'trn-1', await begin(other, 'trn-1', 'mixing'));
		expect(refreshersDue(other.state, 'trn-1')).toMatchObject([{ provenBy: null }]);
	});

	test('a failed one stays due and is tried again after the days and the lessons', async () => {
		const shop = await decidedGap();
		for (let tries = 0; tries < 4; tries += 1) {
			await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing', 'inc-1'), false, ['mix.ratio']);
			const wish = { run: 'r', competency: 'mixing', incident: 'inc-1' };
			expect(codeOf(shop.ask(openRun, wish, 'trn-1'))).toBe('retest-too-early');
			shop.pass({ days: 7 });
			expect(codeOf(shop.ask(openRun, wish, 'trn-1'))).toBe('lessons-not-redone');
			await doLessons(shop, 'trn-1', 'mixing');
			expect(codeOf(shop.ask(openRun, wish, 'trn-1'))).toBe('accepted');
		}
		expect(refreshersDue(shop.state, 'trn-1')).toHaveLength(1);
	});

	test('holds up a new signature in that competency', async () => {
		const shop = await decidedGap();
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing'));
		await shop.do(recordPractical, practical(shop, 'trn-1', 'mixing', 'lead-1'), 'lead-1');
		expect(shop.ask(signOff, signature(shop, 'trn-1', 'mixing'), 'lead-1')).toMatchObject({
			refusal: { code: 'refresher-open', detail: ['inc-1'] }
		});
	});
});

describe('closing', () => {
	test('waits for a decision, for the refresher, and for the defect to stay away', async () => {
		const shop = await testShop();
		await makeSigned(shop, 'trn-1', 'mixing');
		const ask = (changes = {}, actor = 'lead-1') =>
			codeOf(shop.ask(closeIncident, { ...closing, ...changes }, actor));
		expect(ask()).toBe('unknown-incident');
		await shop.do(reportIncident, report(), 'lead-1');
		expect(ask({}, 'trn-2')).toBe('not-allowed');
		expect(ask()).toBe('incident-undecided');
		await shop.do(decideIncident, gap(), 'lead-1');
		expect(ask()).toBe('refresher-open');
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing', 'inc-1'), true, ['mix.ratio']);
		const sign = { incident: 'inc-1', conflict: noConflict, watchedBy: [], on: shop.today };
		await shop.do(signRefresher, sign, 'lead-1');
		expect(ask({ repeats: 1 })).toBe('defect-came-back');
		expect(codeOf(await shop.try(closeIncident, { ...closing, jobsChecked: 0 }, 'lead-1'))).toBe('malformed');
		await shop.do(closeIncident, closing, 'lead-1');
		expect(ask()).toBe('incident-closed');
	});

	test('is not of the own incident', async () => {
		const shop = await testShop();
		await shop.do(reportIncident, report('inc-1', 'sup-1'), 'sup-2');
		expect(codeOf(shop.ask(closeIncident, closing, 'sup-1'))).toBe('own-record');
	});
});

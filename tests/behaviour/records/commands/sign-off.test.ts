import { describe, expect, test } from 'vitest';
import {
	addSecondPerson,
	erasePerson,
	handInDrill,
	openRun,
	recordPractical,
	reinstateSignOff,
	setScheme,
	signOff,
	startTraining,
	suspendSignOff,
	withdrawSignOff,
	type Json,
	type Sign
} from '$lib/records';
import { defaultScheme } from '$lib/learning';
import { codeOf, noConflict, reason, testShop, words, type TestShop } from '../test-shop';
import {
	answer,
	clearSafety,
	doLessons,
	issue,
	makeReady,
	makeSigned,
	openRun as begin,
	practical,
	signature,
	standing,
	workThrough
} from '../working-towards';

const asked = (shop: TestShop, changes: Partial<Sign> = {}, actor = 'lead-1', person = 'trn-1') =>
	shop.ask(signOff, { ...signature(shop, person, 'mixing'), ...changes }, actor);

describe('a signature', () => {
	test('rests on every part, and names it', async () => {
		const shop = await testShop();
		const missing = () => asked(shop);
		expect(missing()).toMatchObject({
			refusal: { code: 'parts-missing', detail: ['lessons', 'verdict', 'safety-gate', 'practical'] }
		});
		await doLessons(shop, 'trn-1', 'mixing');
		expect(missing()).toMatchObject({ refusal: { detail: ['verdict', 'safety-gate', 'practical'] } });
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing'));
		expect(missing()).toMatchObject({ refusal: { detail: ['safety-gate', 'practical'] } });
		for (const other of ['intake', 'curing'])
			await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', other));
		expect(missing()).toMatchObject({ refusal: { detail: ['practical'] } });
		const refusedOne = { ...practical(shop, 'trn-1', 'mixing', 'lead-1'), result: 'refused' as const };
		await shop.do(recordPractical, refusedOne, 'lead-1');
		expect(missing()).toMatchObject({ refusal: { detail: ['practical'] } });
		const accepted = practical(shop, 'trn-1', 'mixing', 'lead-1');
		await shop.do(recordPractical, accepted, 'lead-1');
		const may = missing();
		expect(may).toMatchObject({
			ok: true,
			events: [
				{
					event: 'signoff.granted',
					data: {
						signer: 'lead-1',
						evidence: {
							lessons: ['mixing/one', 'mixing/two'],
							practical: accepted.practical,
							safetyDrills: 32
						},
						full: true,
						override: null
					}
				}
			]
		});
	});

	test('is not of the own record, whatever else is missing', async () => {
		const shop = await testShop();
		expect(codeOf(asked(shop, {}, 'lead-1', 'lead-1'))).toBe('own-record');
		await makeSigned(shop, 'sup-1', 'mixing');
		await doLessons(shop, 'sup-1', 'mixing');
		expect(codeOf(asked(shop, {}, 'sup-1', 'sup-1'))).toBe('own-record');
	});

	test('takes a supervisor who is signed for that competency; the founding lead is flagged', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'mixing');
		expect(codeOf(asked(shop, {}, 'trn-2'))).toBe('not-allowed');
		expect(asked(shop, {}, 'sup-1')).toMatchObject({
			refusal: { code: 'not-signed-for-it', detail: ['signer-not-signed'] }
		});
		expect(asked(shop)).toMatchObject({ events: [{ data: { foundingLead: true } }] });
		await makeSigned(shop, 'sup-1', 'mixing');
		expect(asked(shop, {}, 'sup-1')).toMatchObject({
			events: [{ data: { foundingLead: false, signer: 'sup-1' } }]
		});
	});

	test('is refused to a signer who is suspended or out of date', async () => {
		const shop = await testShop();
		const own = await makeSigned(shop, 'sup-1', 'mixing');
		await makeReady(shop, 'trn-1', 'mixing');
		await shop.do(suspendSignOff, { signOff: own, reason: words('t') }, 'lead-1');
		expect(asked(shop, {}, 'sup-1')).toMatchObject({ refusal: { detail: ['signer-suspended'] } });
		await shop.do(reinstateSignOff, { signOff: own, reason: words('t') }, 'lead-1');
		shop.pass({ days: 190 });
		expect(asked(shop, {}, 'sup-1')).toMatchObject({ refusal: { detail: ['signer-authorisation-expired'] } });
	});

	test('is for today: neither backdated nor post-dated', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'mixing');
		expect(codeOf(asked(shop, { on: '2026-03-01' }))).toBe('backdated');
		expect(codeOf(asked(shop, { on: '2026-03-09' }))).toBe('in-the-future');
		expect(asked(shop)).toMatchObject({ events: [{ data: { validFrom: shop.today } }] });
	});

	test('keeps its dates from the scheme of the day', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'curing');
		const wish = signature(shop, 'trn-1', 'curing');
		expect(shop.ask(signOff, wish, 'lead-1')).toMatchObject({
			events: [
				{
					data: {
						validFrom: '2026-03-02',
						validUntil: '2027-03-02', // holds a safety skill: twelve months
						continuityDue: '2026-09-02',
						reevaluationDue: '2029-03-02'
					}
				}
			]
		});
		const id = await makeSigned(shop, 'trn-2', 'curing');
		const shorter = { ...defaultScheme, validity: { ...defaultScheme.validity, monthsWithSafety: 6 } };
		await shop.do(setScheme, { limits: shorter as unknown as Json, effective: shop.today }, 'lead-1');
		expect(shop.state.signOffs.byId.get(id)?.validUntil).toBe('2027-03-02');
	});

	test('says so where the signer is not independent, and a second person adds theirs beside it', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'mixing');
		const wish = { ...signature(shop, 'trn-1', 'mixing'), conflict: { ...noConflict, trained: true } };
		await shop.do(signOff, wish, 'lead-1');
		const signed = () => shop.state.signOffs.byId.get(wish.signOff)!;
		expect(signed().nonIndependent).toBe(true);

		const second = { signOff: wish.signOff, conflict: noConflict };
		const ask = (actor: string, id = wish.signOff) =>
			codeOf(shop.ask(addSecondPerson, { ...second, signOff: id }, actor));
		expect(ask('lead-1')).toBe('same-signer');
		expect(ask('trn-1')).toBe('not-allowed');
		expect(ask('sup-1', 'ghost')).toBe('unknown-sign-off');
		const own = await makeSigned(shop, 'sup-1', 'mixing');
		expect(ask('sup-1', own)).toBe('own-record');
		await shop.do(addSecondPerson, second, 'sup-1');
		expect(ask('sup-1')).toBe('signed-already');
		expect(signed()).toMatchObject({ nonIndependent: true, seconds: [{ second: 'sup-1' }] });
	});

	test('needs a reason where it passes something over', async () => {
		const shop = await testShop();
		await makeReady(shop, 'trn-1', 'mixing');
		const run = await begin(shop, 'trn-1', 'spraying');
		await shop.do(handInDrill, answer(await issue(shop, 'trn-1', run), false, ['respirator']), 'trn-1');
		expect(asked(shop)).toMatchObject({
			refusal: { code: 'reason-missing', detail: ['safety-misses-since-pass'] }
		});
		expect(codeOf(asked(shop, { reason: { ...reason, length: 19 } }))).toBe('reason-missing');
		expect(asked(shop, { reason })).toMatchObject({
			events: [{ data: { override: { what: ['safety-misses-since-pass'], reason: reason.ref } } }]
		});
	});

	test('carries a reading that was accepted outside its limits', async () => {
		const shop = await testShop();
		await doLessons(shop, 'trn-1', 'mixing');
		await clearSafety(shop, 'trn-1');
		const readings = [
			{ reading: 'film', unit: 'm', values: [30e-6], least: null, most: 25e-6, accepted: false }
		];
		const wish = { ...practical(shop, 'trn-1', 'mixing', 'lead-1'), readings, reason };
		await shop.do(recordPractical, wish, 'lead-1');
		expect(asked(shop)).toMatchObject({ refusal: { code: 'reason-missing', detail: ['practical-reading'] } });
	});

	test('is of a person, a competency and watchers there are, under an id of its own', async () => {
		const shop = await testShop();
		const signed = await makeSigned(shop, 'trn-1', 'mixing');
		expect(codeOf(asked(shop, { person: 'ghost' }))).toBe('unknown-person');
		expect(codeOf(asked(shop, { competency: 'safety' }))).toBe('unknown-competency');
		expect(codeOf(asked(shop, { signOff: signed }))).toBe('id-taken');
		expect(codeOf(asked(shop, { watchedBy: ['ghost'] }))).toBe('unknown-person');
		await shop.do(erasePerson, { person: 'trn-1' }, 'lead-1');
		expect(codeOf(asked(shop))).toBe('person-erased');
	});

	test('uses no part twice: to sign again, prove and show again', async () => {
		const shop = await testShop();
		await makeSigned(shop, 'trn-1', 'mixing');
		expect(asked(shop)).toMatchObject({
			refusal: { code: 'parts-missing', detail: ['verdict', 'practical'] }
		});
		shop.pass({ days: 100 });
		await workThrough(shop, 'trn-1', await begin(shop, 'trn-1', 'mixing'));
		await shop.do(recordPractical, practical(shop, 'trn-1', 'mixing', 'lead-1'), 'lead-1');
		const [entry] = await shop.do(signOff, signature(shop, 'trn-1', 'mixing'), 'lead-1');
		// lessons were not taken anew: the full evaluation still counts from the first signature
		expect(entry?.data).toMatchObject({
			full: false,
			validFrom: '2026-06-10',
			reevaluationDue: '2029-03-02'
		});
	});
});

describe('what becomes of a signature', () => {
	const act = (signOff: string) => ({ signOff, reason: words('t-why') });

	test('only a lead suspends, lifts and withdraws, and not their own', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		await makeSigned(shop, 'sup-1', 'mixing');
		for (const command of [suspendSignOff, withdrawSignOff]) {
			expect(codeOf(shop.ask(command, act(id), 'trn-2'))).toBe('not-allowed');
			expect(codeOf(shop.ask(command, act(id), 'sup-1'))).toBe('not-allowed');
			expect(codeOf(shop.ask(command, act('ghost'), 'lead-1'))).toBe('unknown-sign-off');
		}
		await makeReady(shop, 'lead-1', 'mixing', 'sup-1');
		const own = signature(shop, 'lead-1', 'mixing');
		await shop.do(signOff, own, 'sup-1');
		expect(codeOf(shop.ask(suspendSignOff, act(own.signOff), 'lead-1'))).toBe('own-record');
	});

	test('suspended, reinstated, withdrawn: each in its turn, and looked at again within five days', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		const state = () => standing(shop, 'trn-1', 'mixing').standing.state;
		expect(state()).toBe('signed');
		expect(codeOf(shop.ask(reinstateSignOff, act(id), 'lead-1'))).toBe('wrong-state');
		const [suspended] = await shop.do(suspendSignOff, act(id), 'lead-1');
		expect(suspended?.data).toMatchObject({ reviewBy: '2026-03-07' });
		expect(state()).toBe('suspended');
		expect(standing(shop, 'trn-1', 'mixing').mayWorkAlone).toBe(false);
		expect(codeOf(shop.ask(suspendSignOff, act(id), 'lead-1'))).toBe('wrong-state');
		expect(codeOf(asked(shop))).toBe('wrong-state');
		await shop.do(reinstateSignOff, act(id), 'lead-1');
		expect(state()).toBe('signed');
		await shop.do(withdrawSignOff, act(id), 'lead-1');
		expect(state()).toBe('withdrawn');
		expect(codeOf(shop.ask(reinstateSignOff, act(id), 'lead-1'))).toBe('wrong-state');
		expect(codeOf(shop.ask(addSecondPerson, { signOff: id, conflict: noConflict }, 'sup-1'))).toBe(
			'wrong-state'
		);
	});

	test('after a withdrawal only a lead admits the person anew, and every part is taken anew', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		await shop.do(withdrawSignOff, act(id), 'lead-1');
		const run = { run: 'r', competency: 'mixing', incident: null };
		expect(shop.ask(openRun, run, 'trn-1')).toMatchObject({
			refusal: { code: 'wrong-state', detail: ['withdrawn'] }
		});
		const anew = { person: 'trn-1', area: 'mixing', how: 'new-application' as const };
		expect(codeOf(shop.ask(startTraining, anew, 'sup-1'))).toBe('not-allowed');
		expect(codeOf(shop.ask(startTraining, { ...anew, how: 'recertify' }, 'lead-1'))).toBe('wrong-state');
		expect(codeOf(shop.ask(startTraining, { ...anew, area: 'painting' }, 'lead-1'))).toBe(
			'unknown-competency'
		);
		await shop.do(startTraining, anew, 'lead-1');
		expect(standing(shop, 'trn-1', 'mixing').standing.state).toBe('in-training');
		expect(asked(shop)).toMatchObject({ refusal: { detail: ['lessons', 'verdict', 'practical'] } });
	});

	test('it expires by its date; soon after, the lessons still count', async () => {
		const shop = await testShop();
		await makeSigned(shop, 'trn-1', 'curing');
		shop.pass({ days: 365 });
		expect(standing(shop, 'trn-1', 'curing').standing).toEqual({
			state: 'continuity-lapsed',
			since: '2026-09-02'
		});
		shop.pass({ days: 1 });
		expect(standing(shop, 'trn-1', 'curing').standing).toEqual({ state: 'expired', since: '2027-03-02' });
		const again = { person: 'trn-1', area: 'curing', how: 'recertify' as const };
		expect(codeOf(shop.ask(startTraining, { ...again, person: 'sup-1' }, 'sup-1'))).toBe('own-record');
		expect(codeOf(shop.ask(startTraining, { ...again, how: 'start-over' }, 'sup-1'))).toBe('wrong-state');
		await shop.do(startTraining, again, 'sup-1');
		const { evidence } = standing(shop, 'trn-1', 'curing');
		expect(evidence).toMatchObject({
			lessonsDone: true,
			verdict: 'open',
			practical: 'none',
			safety: 'passed'
		});
	});
});

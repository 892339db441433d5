import { describe, expect, test } from 'vitest';
import { METRIC } from '$lib/engine';
import { accept, refreshersDue, type JournalEvent } from '$lib/records';
import { close } from '$lib/server/incidents/close';
import { decideGap, decideSystem } from '$lib/server/incidents/decide';
import { incidentView } from '$lib/server/incidents/incident-view';
import { recordTest } from '$lib/server/incidents/record-test';
import { testEvent } from '../test-event';
import { formOf, incidentShop } from './incident-shop';

const reader = { lang: 'en', units: METRIC } as const;

async function reported() {
	const shop = await incidentShop();
	const incident = await shop.report();
	const now = () => shop.app.journal.state.incidents.get(incident.incident)!;
	const as = (person: string) => testEvent(shop.app, { person });
	return { ...shop, incident, now, as };
}

describe('the test of a cause', () => {
	test('is entered with the direction it showed and moves the cause to the top', async () => {
		const { app, incident, now, as } = await reported();
		const done = await recordTest(
			as('sup'),
			incident,
			formOf({ rule: 'flash-time', shown: 'low', note: 'door log' })
		);
		expect(done).toMatchObject({ ok: true });
		const view = incidentView(app, now(), reader);
		expect(view.causes[0]).toMatchObject({ rule: 'flash-time', ways: [{ direction: 'low', fit: 'shown' }] });
		expect(view.tests).toMatchObject([
			{ rule: 'flash-time', shown: 'low', note: 'door log', by: 'Sup Ervisor' }
		]);
	});

	test.each([
		['names no cause of this defect', { rule: 'blast-pressure', shown: 'low' }, 'tampered'],
		['names no rule at all', { rule: 'constructor', shown: 'low' }, 'tampered'],
		['shows a way in which the rule does not cause it', { rule: 'flash-time', shown: 'high' }, 'tampered'],
		['shows nothing', { rule: 'flash-time' }, { problems: { shown: expect.any(String) } }]
	])('is refused when it %s', async (_why, values, answer) => {
		const { app, incident, as } = await reported();
		const before = app.journal.head.hash;
		expect(await recordTest(as('sup'), incident, formOf(values as Record<string, string>))).toEqual(answer);
		expect(app.journal.head.hash).toBe(before);
	});
});

describe('a decision', () => {
	test('that the way of working caused it has an action and asks nothing of anybody', async () => {
		const { app, incident, now, as } = await reported();
		expect(await decideSystem(as('sup'), incident, formOf({ evidence: 'log', action: ' ' }))).toEqual({
			problems: { action: expect.any(String) }
		});
		await decideSystem(as('sup'), incident, formOf({ evidence: 'door log', action: 'timer at the oven' }));
		expect(refreshersDue(app.journal.state, 'trn')).toEqual([]);
		expect(incidentView(app, now(), reader)).toMatchObject({
			state: 'to-close',
			causes: [],
			decided: { cause: 'system', action: 'timer at the oven', evidence: 'door log' }
		});
	});

	test('that a skill slipped is about exactly the rules ticked', async () => {
		const { app, incident, now, as } = await reported();
		const done = await decideGap(
			as('sup'),
			incident,
			formOf({ rules: ['flash-time'], evidence: 'door log' })
		);
		expect(done).toMatchObject({ ok: true });
		expect(refreshersDue(app.journal.state, 'trn')).toMatchObject([
			{ competency: 'curing', rules: ['flash-time'], provenBy: null }
		]);
		expect(incidentView(app, now(), reader)).toMatchObject({
			state: 'refresher',
			decided: { refresher: 'none', signHref: `/en/people/trn/sign-off/curing?incident=${incident.incident}` }
		});
	});

	test('takes rules of one competency, and at least one', async () => {
		const { incident, as } = await reported();
		for (const rules of [[], ['flash-time', 'coat-interval']])
			expect(await decideGap(as('sup'), incident, formOf({ rules, evidence: 'e' }))).toEqual({
				problems: { rules: expect.any(String) }
			});
	});

	test('does not take a rule that is no cause, is excluded by its test, or belongs to the safety gate', async () => {
		const { incident, now, as } = await reported();
		await recordTest(as('sup'), incident, formOf({ rule: 'flash-time', shown: 'kept' }));
		for (const rule of ['blast-pressure', 'flash-time', 'oven-solvent-load'])
			expect(await decideGap(as('sup'), now(), formOf({ rules: [rule], evidence: 'e' }))).toBe('tampered');
	});

	test('does not ask for proof that no ticket of the shop can give', async () => {
		const { app, report, as } = await reported();
		const sheets = app.journal.state.shop.sheets;
		// only the coating without a mixing ratio is left: nothing on hardener can be asked
		for (const id of [...sheets.keys()]) if (!id.startsWith('demo-c')) sheets.delete(id);
		const incident = await report({ defect: 'amine-bloom' });
		const done = await decideGap(
			as('sup'),
			incident,
			formOf({ rules: ['hardener-by-weight'], evidence: 'e' })
		);
		expect(done).toEqual({ problems: { rules: expect.stringContaining('No ticket') } });
	});

	test('about oneself is refused, and the refusal is in the record', async () => {
		const { app, report } = await reported();
		const own = await report({ person: 'sup' });
		const event = testEvent(app, { person: 'sup' });
		expect(await decideSystem(event, own, formOf({ evidence: 'e', action: 'a' }))).toMatchObject({
			ok: false,
			refusal: { code: 'own-record' }
		});
		expect(app.journal.entries.at(-1)).toMatchObject({ event: 'act.refused', data: { code: 'own-record' } });
	});
});

test('no cause bears a name', async () => {
	const { app, now } = await reported();
	const { causes, offered, defect } = incidentView(app, now(), reader);
	expect(causes.length).toBeGreaterThan(3);
	expect(JSON.stringify([causes, offered, defect])).not.toContain('Tess');
});

test('a job from before the shop kept sheets is judged by its first ones', async () => {
	const { app, report } = await reported();
	const early = await report({ on: '2026-02-01', coating: 'demo-a-isocyanate' });
	const view = incidentView(app, early, reader);
	expect(view.judgedOn).toBe('Mar 2, 2026');
	expect(view.causes[0]?.ways[0]?.fit).toBe('unchecked');
});

test('the refresher is followed from its run to its signature, and closing waits for that', async () => {
	const { app, incident, now, as } = await reported();
	await decideGap(as('sup'), incident, formOf({ rules: ['flash-time'], evidence: 'door log' }));
	const enter = (...events: JournalEvent[]) => app.journal.act(() => accept(...events), 'trn');
	const at = () => {
		const { state, decided } = incidentView(app, now(), reader);
		return [state, decided && 'refresher' in decided && decided.refresher];
	};
	const run = (id: string): JournalEvent => ({
		event: 'proving.opened',
		data: {
			run: id,
			person: 'trn',
			competency: 'curing',
			purpose: 'refresher',
			incident: incident.incident,
			rules: ['flash-time'],
			plan: {},
			scheme: { scheme: 's', version: 1, hash: 'a'.repeat(64) }
		}
	});
	const verdict = (id: string, how: 'passed' | 'failed'): JournalEvent => ({
		event: 'proving.concluded',
		data: { run: id, person: 'trn', verdict: how, drills: 20, right: 20 }
	});
	const counts = formOf({ jobsChecked: '30', repeats: '0' });

	expect(at()).toEqual(['refresher', 'none']);
	await enter(run('r1'));
	expect(at()).toEqual(['refresher', 'open']);
	await enter(verdict('r1', 'failed'));
	expect(at()).toEqual(['refresher', 'failed']);
	await enter(run('r2'), verdict('r2', 'passed'));
	expect(at()).toEqual(['to-sign', 'proven']);
	expect(await close(as('sup'), now(), counts, reader)).toMatchObject({
		refusal: { code: 'refresher-open' }
	});
	await enter({
		event: 'refresher.signed',
		data: {
			incident: incident.incident,
			person: 'trn',
			competency: 'curing',
			run: 'r2',
			signer: 'lead',
			meaning: 'approved',
			conflict: { trained: false, lineManager: false, relative: false, paidByResult: false },
			watchedBy: [],
			nonIndependent: false,
			foundingLead: true
		}
	});
	expect(at()).toEqual(['to-close', 'signed']);
	expect(await close(as('sup'), now(), counts, reader)).toMatchObject({ ok: true });
	expect(at()[0]).toBe('closed');
});

describe('closing', () => {
	const counted = (jobsChecked: string, repeats: string) => formOf({ jobsChecked, repeats });

	test.each([
		['0', '0', ['jobsChecked']],
		['', 'x', ['jobsChecked', 'repeats']],
		['3', '4', ['repeats']],
		['2.5', '0', ['jobsChecked']]
	])('%s jobs with %s repeats is sent back', async (jobs, repeats, wrong) => {
		const { incident, as } = await reported();
		await decideSystem(as('sup'), incident, formOf({ evidence: 'e', action: 'a' }));
		const done = await close(as('sup'), incident, counted(jobs, repeats), reader);
		expect(Object.keys((done as { problems: object }).problems)).toEqual(wrong);
	});

	test('is done once the defect stayed away', async () => {
		const { app, incident, now, as } = await reported();
		await decideSystem(as('sup'), incident, formOf({ evidence: 'e', action: 'a' }));
		expect(await close(as('sup'), incident, counted('30', '1'), reader)).toMatchObject({
			refusal: { code: 'defect-came-back' }
		});
		expect(await close(as('sup'), incident, counted('30', '0'), reader)).toMatchObject({ ok: true });
		expect(incidentView(app, now(), reader)).toMatchObject({ state: 'closed', closed: { jobs: 30 } });
	});
});

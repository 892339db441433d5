import { describe, expect, it } from 'vitest';
import { readSignature } from '$lib/server/standing/signature-form';
import { ownSecret } from '$lib/server/standing/own-secret';
import { sign } from '$lib/server/standing/sign';
import { changeSignOff } from '$lib/server/standing/change-standing';
import { testEvent } from '../test-event';
import { METRIC } from '$lib/engine';
import { decideIncident, reportIncident } from '$lib/records';
import { signOffPage } from '$lib/server/standing/sign-off-page';
import { todayView } from '$lib/server/standing/today-view';
import {
	act,
	openRun,
	OTHER,
	workThrough,
	AUDITOR,
	LEAD,
	makeReady,
	makeSigned,
	SUPERVISOR,
	TRAINEE,
	workedShop
} from './worked-shop';

const form = (entries: Record<string, string>) => {
	const data = new FormData();
	for (const [name, value] of Object.entries(entries)) data.append(name, value);
	return data;
};

const entries = (changes: Record<string, string> = {}) => ({
	trained: 'yes',
	lineManager: 'no',
	relative: 'no',
	paidByResult: 'no',
	watchedBy: 'nobody',
	on: '2026-03-02',
	...changes
});

const about = { person: TRAINEE, competency: 'mixing', incident: null } as const;

describe('a signature', () => {
	it('is entered with its flags and nothing more than was said', async () => {
		const { app } = await workedShop();
		await makeReady(app, TRAINEE);
		const outcome = await sign(testEvent(app, { person: LEAD }), about, readSignature(form(entries())));
		expect(outcome.ok).toBe(true);
		expect(app.journal.entries.at(-1)).toMatchObject({
			actor: LEAD,
			event: 'signoff.granted',
			data: {
				nonIndependent: true,
				foundingLead: true,
				watchedBy: [],
				override: null,
				validFrom: '2026-03-02'
			}
		});
	});

	it('for another day is refused, and the refusal is on record', async () => {
		const { app } = await workedShop();
		await makeReady(app, TRAINEE);
		const read = readSignature(form(entries({ on: '2026-03-01' })));
		const outcome = await sign(testEvent(app, { person: LEAD }), about, read);
		expect(outcome).toMatchObject({ ok: false, refusal: { code: 'backdated' } });
		expect(app.journal.entries.at(-1)).toMatchObject({
			event: 'act.refused',
			data: { what: 'sign-off', code: 'backdated', person: TRAINEE }
		});
	});

	it('by an auditor is refused', async () => {
		const { app } = await workedShop();
		await makeReady(app, TRAINEE);
		const outcome = await sign(testEvent(app, { person: AUDITOR }), about, readSignature(form(entries())));
		expect(outcome).toMatchObject({ ok: false, refusal: { code: 'not-allowed' } });
	});
});

describe('a refresher signature', () => {
	const words = { text: 't-1', hash: 'a'.repeat(64), lang: 'en' as const };
	const slipped = async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		const incident = 'inc-1';
		await act(
			shop.app,
			reportIncident,
			{ incident, defect: 'soft-film', job: 'J-1', person: TRAINEE, conditions: {}, note: null },
			SUPERVISOR
		);
		const gap = { cause: 'skill-gap', competency: 'mixing', rules: ['stir-time'] } as const;
		await act(
			shop.app,
			decideIncident,
			{ incident, evidence: words, ...gap, rules: [...gap.rules] },
			SUPERVISOR
		);
		return { ...shop, incident };
	};
	const reader = { lang: 'en', units: METRIC } as const;

	it('is taken once the rules were proven again, with the log of that run on the page', async () => {
		const { app, incident } = await slipped();
		const refresher = { ...about, incident };
		const page = () => signOffPage(app, refresher, LEAD, reader);
		expect(page().against).toMatchObject({ code: 'parts-missing', detail: ['verdict'] });
		const run = await workThrough(app, TRAINEE, await openRun(app, TRAINEE, 'mixing', incident));
		expect(page()).toMatchObject({ against: null, run: { run, purpose: 'refresher' }, practical: null });
		expect(page().run?.log).toHaveLength(12);
		const read = readSignature(form(entries({ incident })));
		expect((await sign(testEvent(app, { person: LEAD }), refresher, read)).ok).toBe(true);
		expect(app.journal.entries.at(-1)).toMatchObject({ event: 'refresher.signed', data: { run, incident } });
		expect(todayView(app, TRAINEE, 'en').may.alone).toHaveLength(1);
	});

	it('is not taken on the page of another person or competency', async () => {
		const { app, incident } = await slipped();
		await workThrough(app, TRAINEE, await openRun(app, TRAINEE, 'mixing', incident));
		const read = readSignature(form(entries({ incident })));
		for (const wrong of [
			{ person: OTHER, competency: 'mixing', incident },
			{ person: TRAINEE, competency: 'curing', incident }
		] as const) {
			expect(signOffPage(app, wrong, LEAD, reader).against?.code).toBe('no-refresher-due');
			expect(await sign(testEvent(app, { person: LEAD }), wrong, read)).toMatchObject({
				refusal: { code: 'no-refresher-due' }
			});
		}
	});
});

describe('the secret entered again', () => {
	it('must be there and be the signer’s; wrong ones soon have to wait', async () => {
		const { app } = await workedShop();
		const tried = (secret: string) =>
			ownSecret(testEvent(app, { person: LEAD }), form({ secret }), 'sign-off');
		expect(await tried('')).toEqual({ reason: 'empty' });
		expect(await tried('grey masking tape')).toEqual({ reason: 'wrong' });
		expect(app.journal.entries.at(-1)).toMatchObject({ data: { what: 'sign-off', code: 'wrong-secret' } });
		await tried('x');
		await tried('y');
		expect(await tried('nine copper racks')).toMatchObject({ reason: 'wait' });
	});
});

describe('changing a sign-off', () => {
	it('takes a known act, a reason and the secret, in that order', async () => {
		const shop = await workedShop();
		const { app } = shop;
		const signOff = await makeSigned(shop, TRAINEE);
		const change = (more: Record<string, string>, person = LEAD) =>
			changeSignOff(testEvent(app, { person }), form({ signOff, ...more }), TRAINEE);
		const secret = 'nine copper racks';
		expect(await change({ change: 'constructor', reason: 'r', secret })).toMatchObject({ problem: 'act' });
		expect(await change({ change: 'suspend', reason: ' ', secret })).toMatchObject({ problem: 'reason' });
		expect(await change({ change: 'suspend', reason: 'r', secret: 'no' })).toMatchObject({
			secret: { reason: 'wrong' }
		});
		const own = { change: 'suspend', reason: 'cracked film on two jobs', secret: 'grey masking tape' };
		expect(await change(own, SUPERVISOR)).toMatchObject({ refusal: { code: 'not-allowed' } });
		const elsewhere = form({ signOff, ...own, secret });
		expect(await changeSignOff(testEvent(app, { person: LEAD }), elsewhere, OTHER)).toMatchObject({
			refusal: { code: 'unknown-sign-off' }
		});
		expect((await change({ ...own, secret })).ok).toBe(true);
		expect(app.journal.state.signOffs.byId.get(signOff)?.suspended).not.toBeNull();
	});
});

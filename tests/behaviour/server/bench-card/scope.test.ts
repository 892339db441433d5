import { isRedirect } from '@sveltejs/kit';
import { expect, describe, it } from 'vitest';
import { field, solve, type FieldId } from '$lib/engine';
import { decideIncident, reportIncident, suspendSignOff } from '$lib/records';
import { openBenchCard } from '$lib/server/bench-card/bench-card';
import { leadOn } from '$lib/server/request/lead-on';
import { shopInForce } from '$lib/server/shop-in-force';
import { act, AUDITOR, LEAD, makeSigned, SUPERVISOR, TRAINEE, workedShop } from '../standing/worked-shop';
import { testEvent } from '../test-event';
import { exampleJob, fieldsOn, jobForm, post } from './job-form';

const words = { text: 't-1', hash: 'a'.repeat(64), lang: 'en' as const };
const DAY = 24 * 60 * 60_000;
const competencyOf = (id: string) => field(id as FieldId).competency;
const steel = async (shop: Awaited<ReturnType<typeof workedShop>>, person: string) =>
	post(shop.app, person, jobForm(shop.app, exampleJob(shop.app, 'steel-plates')));

describe('a bench card', () => {
	it('gives a lead the whole plan: every field with the setting the engine gives', async () => {
		const shop = await workedShop();
		const answer = await steel(shop, LEAD);
		const { fields } = solve(exampleJob(shop.app, 'steel-plates'), shopInForce(shop.app).shop);
		const expected = fields
			.map(({ field: id }) => id)
			.filter((id) => !['decision', 'ask-about'].includes(id));
		expect(answer.status).toBe(200);
		expect(fieldsOn(answer).toSorted()).toEqual(expected.toSorted());
		const [pressure] = answer.card!.stations.flatMap(({ lines }) =>
			lines.filter(({ id }) => id === 'cap-pressure')
		);
		expect(pressure?.bases).toHaveLength(2);
	});

	it('gives somebody signed in one competency its settings, everybody’s safety, and nothing else', async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		const answer = await steel(shop, TRAINEE);
		expect(new Set(fieldsOn(answer).map(competencyOf))).toEqual(new Set(['mixing', 'safety']));
		expect(answer.card!.stations.map(({ station, given }) => [station, given])).toEqual([
			['intake', 'none'],
			['preparation', 'none'],
			['mixing', 'alone'],
			['spraying', 'none'],
			['curing', 'none'],
			['inspection', 'none']
		]);
		expect(JSON.stringify(answer.card!.stations)).not.toMatch(
			/cure-temperature|Blast pressure at the nozzle/
		);
		expect(answer.card!.supervised).toEqual([]);
	});

	it('is stamped as supervised work while a refresher is due, naming why', async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		const { app } = shop;
		const report = { incident: 'inc-1', defect: 'soft-film', job: 'J-1', person: TRAINEE };
		await act(app, reportIncident, { ...report, conditions: {}, note: null }, SUPERVISOR);
		const decision = { incident: 'inc-1', cause: 'skill-gap' as const, evidence: words };
		await act(app, decideIncident, { ...decision, competency: 'mixing', rules: ['stir-time'] }, SUPERVISOR);
		const answer = await steel(shop, TRAINEE);
		expect(answer.card!.supervised).toEqual(['Mixing: a refresher is due']);
		expect(fieldsOn(answer)).toContain('stir-time');
	});

	it('is stamped as supervised work once the signature is no longer kept up', async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		shop.wait(185 * DAY);
		const answer = await steel(shop, TRAINEE);
		expect(answer.card!.supervised).toEqual(['Mixing: not confirmed in time that you still do this work']);
	});

	it('is refused to whoever is signed in nothing, in training or supervising', async () => {
		const shop = await workedShop();
		for (const person of [TRAINEE, SUPERVISOR]) {
			const answer = await steel(shop, person);
			expect(answer).toMatchObject({ status: 403, card: undefined, job: undefined });
			expect(openBenchCard(testEvent(shop.app, { person })).may).toBe(false);
		}
	});

	it('is refused again once the only signature is suspended', async () => {
		const shop = await workedShop();
		const signOff = await makeSigned(shop, TRAINEE);
		expect((await steel(shop, TRAINEE)).status).toBe(200);
		await act(shop.app, suspendSignOff, { signOff, reason: words }, LEAD);
		expect((await steel(shop, TRAINEE)).status).toBe(403);
	});

	it('is not open to an auditor', async () => {
		const shop = await workedShop();
		await expect(steel(shop, AUDITOR)).rejects.toMatchObject({ status: 403 });
	});

	it('is closed with the book while a proving drill is open, signed or not', async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		shop.app.journal.state.attempts.open.set(TRAINEE, 'drill-1');
		for (const wish of [{}, { form: { lines: '1' } }]) {
			const event = testEvent(shop.app, { route: '/[lang=lang]/bench-card', person: TRAINEE, ...wish });
			const ask = async () => leadOn({ event, resolve: () => new Response() });
			const sent = await ask().catch((thrown: unknown) => thrown);
			expect(isRedirect(sent) && sent.location).toBe('/en/closed-book');
		}
	});

	it('enters nothing into the record', async () => {
		const shop = await workedShop();
		const before = shop.app.journal.head;
		await steel(shop, LEAD);
		expect(shop.app.journal.head).toEqual(before);
	});
});

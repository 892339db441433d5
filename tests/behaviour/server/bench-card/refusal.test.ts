import { describe, expect, it } from 'vitest';
import { ruleById, solve, type Job } from '$lib/engine';
import { setShopValue } from '$lib/records';
import { shopInForce } from '$lib/server/shop-in-force';
import { act, LEAD, TRAINEE, makeSigned, workedShop } from '../standing/worked-shop';
import { exampleJob, jobForm, post } from './job-form';

const QUESTIONED = [
	['unknown-blocks', 'ask'],
	['magnetic-stainless', 'ask'],
	['magnesium-boxes', 'refuse'],
	['sealed-floats', 'refuse'],
	['old-coated-plates', 'ask'],
	['yellow-plates', 'ask'],
	['fitted-bearings', 'ask'],
	['unstated-film', 'ask'],
	['thick-film', 'ask'],
	['polypropylene-tubs', 'ask']
] as const;

describe('a job that may not start', () => {
	it.each(QUESTIONED)('gets no card: %s', async (id) => {
		const { app } = await workedShop();
		const job = exampleJob(app, id);
		const { reasons, decision } = solve(job, shopInForce(app).shop);
		const { status, card, refusal } = await post(app, LEAD, jobForm(app, job));
		expect([status, card, refusal?.decision]).toEqual([422, undefined, decision]);
		expect(refusal?.reasons.map(({ title }) => title)).toEqual(
			reasons.map((rule) => ruleById(rule).title.en)
		);
		expect(refusal?.questions.length).toBeGreaterThan(0);
		for (const { topic, whom } of refusal?.questions ?? []) expect([topic, whom]).not.toContain(undefined);
	});

	it('is told so with every reason to somebody who is not signed for intake', async () => {
		const shop = await workedShop();
		await makeSigned(shop, TRAINEE);
		const answer = await post(shop.app, TRAINEE, jobForm(shop.app, exampleJob(shop.app, 'unknown-blocks')));
		expect(answer.refusal?.reasons.map(({ title }) => title)).toContain('Unknown material stops the job');
	});

	it('names the limits that do not meet', async () => {
		const { app } = await workedShop();
		const { on } = shopInForce(app).shop;
		const amount = { from: on, min: 1e5, max: 1.2e5 };
		await act(app, setShopValue, { value: 'gun.cap-pressure', amount, from: on, reason: null }, LEAD);
		const job: Job = exampleJob(app, 'steel-plates');
		const { conflicts } = solve(job, shopInForce(app).shop);
		expect(conflicts.length).toBeGreaterThan(0);
		const { refusal, card } = await post(app, LEAD, jobForm(app, job));
		expect(card).toBeUndefined();
		expect(refusal?.conflicts.map(({ rules }) => rules.length)).toEqual(
			conflicts.map(({ rules }) => rules.length)
		);
		expect(refusal?.questions).toContainEqual({
			topic: 'two limits that cannot both be met',
			whom: 'your lead, naming both limits'
		});
	});
});

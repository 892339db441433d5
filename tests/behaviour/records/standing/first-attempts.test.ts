import { describe, expect, it } from 'vitest';
import { firstAttempts, giveUpDrill, handInDrill, handInPractice } from '$lib/records';
import { testShop, type TestShop } from '../test-shop';
import { answer, issue, openRun, workThrough } from '../working-towards';

const practise = (shop: TestShop, person: string, seed: string, findings: string[], kind = 'ticket') =>
	shop.do(
		handInPractice,
		{
			sheet: {
				attempt: shop.id('attempt'),
				kind,
				seed,
				level: 1,
				engineVersion: '1',
				shopValuesHash: 'c'.repeat(64),
				rules: ['rule-a', 'rule-b'],
				answers: {},
				hints: 0,
				right: findings.length === 0,
				findings
			},
			first: { part: 'whole', support: 'full', findings }
		},
		person
	);

const told = (shop: TestShop) =>
	firstAttempts(shop.state).map(({ person, how, kept }) => [person, how, Object.fromEntries(kept)]);

describe('first attempts in practice', () => {
	it('say which rules of the ticket were kept', async () => {
		const shop = await testShop();
		await practise(shop, 'trn-1', '7', ['rule-b']);
		expect(firstAttempts(shop.state)).toEqual([
			{
				person: 'trn-1',
				how: 'practice',
				kind: 'ticket',
				competency: null,
				kept: new Map([
					['rule-a', true],
					['rule-b', false]
				])
			}
		]);
	});

	it('leave out a second go at the same ticket, but not another person’s or another kind’s', async () => {
		const shop = await testShop();
		await practise(shop, 'trn-1', '7', ['rule-a']);
		await practise(shop, 'trn-1', '7', []);
		await practise(shop, 'sup-1', '7', []);
		await practise(shop, 'trn-1', '7', ['rule-b'], 'mix');
		expect(told(shop)).toEqual([
			['trn-1', 'practice', { 'rule-a': false, 'rule-b': true }],
			['trn-1', 'practice', { 'rule-a': true, 'rule-b': false }],
			['sup-1', 'practice', { 'rule-a': true, 'rule-b': true }]
		]);
	});
});

describe('first attempts in proving', () => {
	it('are told once the run has its verdict, not while it goes on', async () => {
		const shop = await testShop();
		const run = await openRun(shop, 'trn-1', 'mixing');
		await shop.do(handInDrill, answer(await issue(shop, 'trn-1', run), false), 'trn-1');
		expect(told(shop)).toEqual([]);
		const { drills } = await workThrough(shop, 'trn-1', run, false);
		const all = firstAttempts(shop.state);
		expect(all).toHaveLength(drills);
		expect(all[0]).toEqual({
			person: 'trn-1',
			how: 'proving',
			kind: 'whole-job',
			competency: 'mixing',
			kept: new Map([['some-rule', false]])
		});
	});

	it('leave out a drill that was given up', async () => {
		const shop = await testShop();
		const run = await openRun(shop, 'trn-1', 'mixing');
		const drill = await issue(shop, 'trn-1', run);
		await shop.do(giveUpDrill, { drill }, 'trn-1');
		const { drills } = await workThrough(shop, 'trn-1', run, false);
		expect(told(shop)).toHaveLength(drills - 1);
	});
});

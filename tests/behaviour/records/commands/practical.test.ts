import { describe, expect, test } from 'vitest';
import { recordPractical, type RecordPractical } from '$lib/records';
import { codeOf, reason, testShop } from '../test-shop';
import { makeSigned, practical } from '../working-towards';

const asking = async (changes: Partial<RecordPractical>, actor = 'lead-1') => {
	const shop = await testShop();
	shop.pass({ hours: 2 });
	return shop.ask(recordPractical, { ...practical(shop, 'trn-1', 'mixing', 'lead-1'), ...changes }, actor);
};
const asked = async (changes: Partial<RecordPractical>, actor = 'lead-1') =>
	codeOf(await asking(changes, actor));

describe('a practical', () => {
	test('is entered by whoever watched it', async () => {
		expect(await asked({})).toBe('accepted');
		expect(await asked({ witness: 'sup-1' })).toBe('not-witnessed');
		expect(await asked({ witness: 'trn-2' }, 'trn-2')).toBe('not-allowed');
	});

	test('is not of the own work', async () => {
		expect(await asked({ person: 'lead-1' })).toBe('own-record');
	});

	test('is watched by somebody signed for that competency', async () => {
		expect(await asked({ witness: 'sup-1' }, 'sup-1')).toBe('not-signed-for-it');
		const shop = await testShop();
		await makeSigned(shop, 'sup-1', 'mixing');
		expect(codeOf(shop.ask(recordPractical, practical(shop, 'trn-1', 'mixing', 'sup-1'), 'sup-1'))).toBe(
			'accepted'
		);
		expect(codeOf(shop.ask(recordPractical, practical(shop, 'trn-1', 'curing', 'sup-1'), 'sup-1'))).toBe(
			'not-signed-for-it'
		);
	});

	test('is of a person and a competency there are', async () => {
		expect(await asked({ person: 'ghost' })).toBe('unknown-person');
		expect(await asked({ competency: 'safety' })).toBe('unknown-competency');
	});

	test('was neither taken tomorrow nor before the person was in training', async () => {
		expect(await asked({ takenAt: '2026-03-02T18:00:00.000Z' })).toBe('in-the-future');
		expect(await asked({ takenAt: '2026-03-01T15:00:00.000Z' })).toBe('backdated');
	});

	test('is marked late when it is entered more than a day after', async () => {
		const shop = await testShop();
		const soon = practical(shop, 'trn-1', 'mixing', 'lead-1');
		shop.pass({ hours: 24 });
		expect(shop.ask(recordPractical, soon, 'lead-1')).toMatchObject({ events: [{ data: { late: false } }] });
		shop.pass({ minutes: 1 });
		expect(shop.ask(recordPractical, soon, 'lead-1')).toMatchObject({ events: [{ data: { late: true } }] });
	});

	test('is not accepted while a gate was not met or not seen, whatever the reason', async () => {
		for (const seen of ['not-met', 'not-seen'] as const) {
			const gates = [
				{ gate: 'G1', seen: 'met' as const, critical: true },
				{ gate: 'G3', seen, critical: false }
			];
			expect(await asking({ gates, reason })).toMatchObject({
				refusal: { code: 'gate-not-met', detail: ['G3'] }
			});
			expect(await asked({ gates, result: 'refused' })).toBe('accepted');
		}
		expect(await asked({ gates: [] })).toBe('gate-not-met');
		expect(await asked({ readings: [] })).toBe('malformed');
	});

	test('judges the raw readings itself, and takes one outside only with a reason', async () => {
		const readings = [
			{ reading: 'film', unit: 'm', values: [20e-6, 26e-6], least: 15e-6, most: 25e-6, accepted: true }
		];
		expect(await asking({ readings })).toMatchObject({
			refusal: { code: 'reason-missing', detail: ['film'] }
		});
		expect(await asked({ readings, reason: { ...reason, length: 19 } })).toBe('reason-missing');
		expect(await asking({ readings, reason })).toMatchObject({
			events: [
				{ data: { readings: [{ accepted: false }], override: { what: ['film'], reason: reason.ref } } }
			]
		});
		expect(await asked({ readings, result: 'refused' })).toBe('accepted');
		const none = [{ ...readings[0]!, values: [] }];
		expect(await asked({ readings: none })).toBe('reason-missing');
	});

	test('has an id of its own', async () => {
		const shop = await testShop();
		const wish = practical(shop, 'trn-1', 'mixing', 'lead-1');
		await shop.do(recordPractical, wish, 'lead-1');
		expect(codeOf(shop.ask(recordPractical, wish, 'lead-1'))).toBe('id-taken');
	});
});

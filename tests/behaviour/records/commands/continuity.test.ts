import { describe, expect, test } from 'vitest';
import { confirmContinuity, recordPractical, signOff, suspendSignOff } from '$lib/records';
import { codeOf, testShop, words, type TestShop } from '../test-shop';
import { makeSigned, openRun, practical, signature, standing, workThrough } from '../working-towards';

const ask = (shop: TestShop, signOff: string, jobs: { job: string; on: string }[], actor = 'lead-1') =>
	shop.ask(confirmContinuity, { signOff, jobs }, actor);

describe('confirming that somebody still does the work', () => {
	test('names at least one job of the last six months', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		shop.pass({ days: 150 });
		expect(codeOf(ask(shop, id, []))).toBe('no-jobs');
		expect(codeOf(ask(shop, id, [{ job: 'WO-7', on: '2026-08-30' }]))).toBe('job-out-of-period');
		expect(
			ask(shop, id, [
				{ job: 'WO-7', on: '2026-07-01' },
				{ job: 'WO-1', on: '2025-12-01' }
			])
		).toMatchObject({
			refusal: { code: 'job-out-of-period', detail: ['WO-1'] }
		});
		await shop.do(confirmContinuity, { signOff: id, jobs: [{ job: 'WO-7', on: '2026-07-01' }] }, 'lead-1');
		expect(shop.state.signOffs.byId.get(id)?.confirmBy).toBe('2027-01-30');
	});

	test('is not of the own work, and by somebody signed for it', async () => {
		const shop = await testShop();
		const own = await makeSigned(shop, 'sup-1', 'mixing');
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		const jobs = [{ job: 'WO-7', on: '2026-03-02' }];
		expect(codeOf(ask(shop, own, jobs, 'sup-1'))).toBe('own-record');
		expect(codeOf(ask(shop, id, jobs, 'sup-2'))).toBe('not-signed-for-it');
		expect(codeOf(ask(shop, id, jobs, 'trn-2'))).toBe('not-allowed');
		expect(codeOf(ask(shop, 'ghost', jobs))).toBe('unknown-sign-off');
		expect(codeOf(ask(shop, id, jobs, 'sup-1'))).toBe('accepted');
	});

	test('late by up to 30 days it still does; later it takes a new practical as well', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		const state = () => standing(shop, 'trn-1', 'mixing').standing.state;
		shop.pass({ days: 184 });
		expect([shop.today, state()]).toEqual(['2026-09-02', 'signed']);
		shop.pass({ days: 30 });
		expect([shop.today, state()]).toEqual(['2026-10-02', 'continuity-lapsed']);
		expect(ask(shop, id, [{ job: 'WO-7', on: '2026-09-20' }])).toMatchObject({
			events: [{ data: { how: 'confirm-late', practical: null } }]
		});

		shop.pass({ days: 1 });
		const jobs = [{ job: 'WO-7', on: '2026-09-20' }];
		expect(codeOf(ask(shop, id, jobs))).toBe('practical-missing');
		const taken = practical(shop, 'trn-1', 'mixing', 'lead-1');
		await shop.do(recordPractical, taken, 'lead-1');
		await shop.do(confirmContinuity, { signOff: id, jobs }, 'lead-1');
		expect(shop.journal.entries.at(-1)?.data).toMatchObject({ how: 'requalify', practical: taken.practical });
		expect(state()).toBe('signed');
	});

	test('is of the latest signature: an earlier one has been replaced', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		await workThrough(shop, 'trn-1', await openRun(shop, 'trn-1', 'mixing'));
		await shop.do(recordPractical, practical(shop, 'trn-1', 'mixing', 'lead-1'), 'lead-1');
		await shop.do(signOff, signature(shop, 'trn-1', 'mixing'), 'lead-1');
		expect(ask(shop, id, [{ job: 'WO-7', on: '2026-03-02' }])).toMatchObject({
			refusal: { code: 'wrong-state', detail: ['superseded'] }
		});
		const suspending = { signOff: id, reason: words('t') };
		expect(shop.ask(suspendSignOff, suspending, 'lead-1')).toMatchObject({
			refusal: { code: 'wrong-state', detail: ['superseded'] }
		});
	});

	test('is of a signature that stands', async () => {
		const shop = await testShop();
		const id = await makeSigned(shop, 'trn-1', 'mixing');
		await shop.do(suspendSignOff, { signOff: id, reason: words('t') }, 'lead-1');
		expect(codeOf(ask(shop, id, [{ job: 'WO-7', on: '2026-03-02' }]))).toBe('wrong-state');
	});
});

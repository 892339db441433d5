import { isHttpError, isRedirect } from '@sveltejs/kit';
import { expect, it } from 'vitest';
import { enterShop } from '$lib/server/shop/enter';
import { shopOverview } from '$lib/server/shop/overview';
import { testEvent } from '../test-event';
import { demoShop } from './in-the-shop';

it('lets a lead change the shop’s pages and an auditor read them', async () => {
	const { app, wait } = await demoShop();
	expect(enterShop(testEvent(app, { person: 'demo-lead' })).mayChange).toBe(true);
	expect(enterShop(testEvent(app, { person: 'demo-auditor' })).mayChange).toBe(false);
	const late = testEvent(app, { person: 'demo-auditor' });
	wait(40 * 24 * 3600 * 1000);
	expect(() => enterShop(late)).toThrow();
});

it('lets nobody else in', async () => {
	const { app } = await demoShop();
	for (const person of ['demo-trainee', 'demo-supervisor'])
		try {
			enterShop(testEvent(app, { person }));
			expect.unreachable();
		} catch (thrown) {
			expect(isHttpError(thrown, 403), person).toBe(true);
		}
	try {
		enterShop(testEvent(app));
		expect.unreachable();
	} catch (thrown) {
		expect(isRedirect(thrown)).toBe(true);
	}
});

it('says where the data lie and how the journal ends now', async () => {
	const { app } = await demoShop();
	const { folder, entries, lastHash, hasSheets } = shopOverview(app, 'en');
	expect(folder).toBe(app.settings.dataFolder);
	expect({ entries, lastHash, hasSheets }).toEqual({
		entries: app.journal.entries.length,
		lastHash: app.journal.entries.at(-1)!.hash,
		hasSheets: true
	});
});

import { describe, expect, it } from 'vitest';
import { suspendSignOff } from '$lib/records';
import { requirements } from '$lib/server/requirements';
import { offeredActs } from '$lib/server/standing/offered-acts';
import type { App } from '$lib/server/app';
import { act, AUDITOR, LEAD, makeSigned, SUPERVISOR, TRAINEE, workedShop } from './worked-shop';

const offered = (app: App, actor: string, person = TRAINEE) =>
	offeredActs(app.journal.state, { actor, now: app.now().toISOString(), requirements }, person, 'mixing');

describe('acts offered in a competency', () => {
	it('are none to the person themselves and none to an auditor', async () => {
		const shop = await workedShop();
		const { app } = shop;
		await makeSigned(shop, TRAINEE);
		expect(offered(app, TRAINEE).any).toBe(false);
		expect(offered(app, AUDITOR).any).toBe(false);
		expect(offered(app, LEAD, LEAD).any).toBe(false);
	});

	it('leave suspending and withdrawing to a lead, and signing to whoever is signed for it', async () => {
		const shop = await workedShop();
		const { app } = shop;
		await makeSigned(shop, TRAINEE);
		expect(offered(app, LEAD)).toMatchObject({
			practical: true,
			continuity: true,
			second: false,
			changes: ['suspend', 'withdraw']
		});
		expect(offered(app, SUPERVISOR)).toMatchObject({
			practical: false,
			continuity: false,
			second: true,
			changes: [],
			look: true
		});
	});

	it('follow the state, and asking writes nothing', async () => {
		const shop = await workedShop();
		const { app } = shop;
		const signOff = await makeSigned(shop, TRAINEE);
		const reason = { text: 't-1', hash: 'a'.repeat(64), lang: 'en' as const };
		await act(app, suspendSignOff, { signOff, reason }, LEAD);
		const { head } = app.journal;
		expect(offered(app, LEAD)).toMatchObject({ continuity: false, changes: ['reinstate', 'withdraw'] });
		expect(app.journal.head).toEqual(head);
	});
});

import { isHttpError } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import { refuse, setRoles } from '$lib/records';
import { act } from '$lib/server/act';
import { fillDemoShop } from '$lib/server/demo';
import { refused } from '$lib/server/refused';
import { testApp } from './test-app';
import { testEvent } from './test-event';

const WISH = { person: 'demo-trainee', roles: ['trainee', 'supervisor'] as ('trainee' | 'supervisor')[] };

describe('an act in somebody’s name', () => {
	it('is entered under whoever is signed in', async () => {
		const { app } = await testApp();
		await fillDemoShop(app);
		expect((await act(testEvent(app, { person: 'demo-lead' }), setRoles, WISH)).ok).toBe(true);
		expect(app.journal.entries.at(-1)).toMatchObject({ actor: 'demo-lead', event: 'person.roles-set' });
	});

	it('is refused to who may not, and entered as refused when asked for', async () => {
		const { app } = await testApp();
		await fillDemoShop(app);
		const event = testEvent(app, { person: 'demo-trainee' });
		const before = app.journal.head.count;
		expect(await act(event, setRoles, WISH)).toMatchObject({ ok: false, refusal: { code: 'not-allowed' } });
		expect(app.journal.head.count).toBe(before);
		await act(event, setRoles, WISH, { what: 'set-roles', person: 'demo-trainee' });
		expect(app.journal.entries.at(-1)).toMatchObject({
			actor: 'demo-trainee',
			event: 'act.refused',
			data: { what: 'set-roles', code: 'not-allowed' }
		});
	});

	it('is nobody’s without a sign-in', async () => {
		const { app } = await testApp();
		await fillDemoShop(app);
		const event = testEvent(app, { form: { a: 'b' } });
		try {
			await act(event, setRoles, WISH);
			expect.unreachable();
		} catch (thrown) {
			expect(isHttpError(thrown, 401)).toBe(true);
		}
	});
});

describe('a refusal as an answer', () => {
	it.each([
		['malformed', 400],
		['not-allowed', 403],
		['own-record', 403],
		['unknown-person', 404],
		['wrong-state', 409]
	] as const)('%s is %i', (code, status) => {
		expect(refused(refuse(code))).toMatchObject({ status, data: { refusal: { code } } });
	});
});

import { describe, expect, it } from 'vitest';
import { crewAtTheDoor } from '$lib/server/crew-at-the-door';
import { fillDemoShop } from '$lib/server/demo';
import { demoPeople, isDemo } from '$lib/server/demo-people';
import { secretKindFor, secretProblem } from '$lib/server/secret-kind';
import { testApp } from './test-app';

describe('the demo shop', () => {
	it('lets each of its people in with the secret that is shown, and is marked as demo', async () => {
		const { app } = await testApp();
		expect(isDemo(app.journal.state)).toBe(false);
		await fillDemoShop(app);
		expect(isDemo(app.journal.state)).toBe(true);
		const crew = crewAtTheDoor(app, 'en');
		expect(crew.map(({ name }) => name)).toEqual(demoPeople.map(({ name }) => name).sort());
		for (const { id, secret, roles } of demoPeople) {
			expect(await app.secrets.verify(id, secret), id).toBe(true);
			expect(crew.find((each) => each.id === id)?.roles).toEqual(roles);
		}
		await app.close();
	});

	it('follows the rules for secrets', () => {
		for (const { roles, secret } of demoPeople)
			expect(secretProblem(secretKindFor(roles), secret)).toBeNull();
	});
});

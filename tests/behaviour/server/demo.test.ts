import { describe, expect, it } from 'vitest';
import { DEMO_SHEETS } from '$lib/engine';
import { competencies, safety } from '$lib/learning';
import { crewAtTheDoor } from '$lib/server/crew-at-the-door';
import { fillDemoShop } from '$lib/server/demo';
import { demoPeople, isDemo } from '$lib/server/demo-people';
import { secretKindFor, secretProblem } from '$lib/server/secret-kind';
import { shopInForce } from '$lib/server/shop-in-force';
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

	it('opens ready to use: every demo sheet in force, everybody who works there in training', async () => {
		const { app } = await testApp();
		await fillDemoShop(app);
		expect(Object.keys(shopInForce(app).shop.sheets).sort()).toEqual(DEMO_SHEETS.map(({ id }) => id).sort());
		const areas = [...competencies, safety].map(({ id }) => id);
		for (const { id, roles } of demoPeople) {
			const started = areas.filter((area) => app.journal.state.training.has(`${id} ${area}`));
			expect(started, id).toEqual(roles.includes('auditor') ? [] : areas);
		}
		await app.close();
	});

	it('follows the rules for secrets', () => {
		for (const { roles, secret } of demoPeople)
			expect(secretProblem(secretKindFor(roles), secret)).toBeNull();
	});
});

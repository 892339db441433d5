import { isHttpError, isRedirect } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import { fillDemoShop } from '$lib/server/demo';
import { requirePerson, requireRole } from '$lib/server/guard';
import { testApp } from './test-app';
import { testEvent } from './test-event';

const demo = async () => {
	const { app } = await testApp();
	await fillDemoShop(app);
	return app;
};

/** Where or with what status a guard sends somebody away. */
const sentAway = (guard: () => unknown): string | number => {
	try {
		guard();
	} catch (thrown) {
		if (isRedirect(thrown)) return thrown.location;
		if (isHttpError(thrown)) return thrown.status;
		throw thrown;
	}
	return 'let in';
};

describe('a page that belongs to a person', () => {
	it('leads a visitor to sign in and back, and refuses a visitor’s form', async () => {
		const app = await demo();
		const path = '/en/crew?area=curing';
		expect(sentAway(() => requirePerson(testEvent(app, { path })))).toBe(
			'/en/sign-in?next=%2Fen%2Fcrew%3Farea%3Dcuring'
		);
		expect(sentAway(() => requirePerson(testEvent(app, { path, form: { a: 'b' } })))).toBe(401);
	});

	it('is open to its roles only; a lead may do what a supervisor may', async () => {
		const app = await demo();
		const as = (person: string, ...roles: Parameters<typeof requireRole>[1][]) =>
			sentAway(() => requireRole(testEvent(app, { person }), ...roles));
		expect(as('demo-supervisor', 'supervisor')).toBe('let in');
		expect(as('demo-lead', 'supervisor')).toBe('let in');
		expect(as('demo-trainee', 'supervisor')).toBe(403);
		expect(as('demo-supervisor', 'lead')).toBe(403);
		expect(as('demo-auditor', 'lead')).toBe(403);
		expect(as('demo-auditor', 'lead', 'auditor')).toBe('let in');
	});
});

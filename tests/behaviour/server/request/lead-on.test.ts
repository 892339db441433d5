import { isRedirect } from '@sveltejs/kit';
import { describe, expect, it } from 'vitest';
import { isBook } from '$lib/server/closed-book';
import { fillDemoShop } from '$lib/server/demo';
import { leadOn } from '$lib/server/request/lead-on';
import { testApp } from '../test-app';
import { testEvent } from '../test-event';

const answer = async (event: ReturnType<typeof testEvent>): Promise<string> => {
	try {
		await leadOn({ event, resolve: () => new Response() });
		return 'answered';
	} catch (thrown) {
		if (isRedirect(thrown)) return thrown.location;
		throw thrown;
	}
};

describe('before there is a shop', () => {
	it('every page leads to setting it up, and that page does not', async () => {
		const { app } = await testApp();
		expect(await answer(testEvent(app, { route: '/[lang=lang]/rules' }))).toBe('/en/setup');
		expect(await answer(testEvent(app, { route: '/[lang=lang]/setup' }))).toBe('answered');
		await fillDemoShop(app);
		expect(await answer(testEvent(app, { route: '/[lang=lang]/rules' }))).toBe('answered');
	});
});

describe('the book', () => {
	it('is rules, lessons, practice, bench card and the report that names rules, whatever is below them', () => {
		for (const route of [
			'rules',
			'rules/[id]',
			'lessons/[...slug]',
			'practice',
			'bench-card',
			'crew/reports'
		])
			expect(isBook(`/[lang=lang]/${route}`), route).toBe(true);
		for (const route of ['proving', 'today', 'crew', 'shop/sheets', 'sign-in', 'bench-cards'])
			expect(isBook(`/[lang=lang]/${route}`), route).toBe(false);
		expect(isBook(null)).toBe(false);
	});

	it('is closed to whoever has a proving drill open, in any way of asking, and to nobody else', async () => {
		const { app } = await testApp();
		await fillDemoShop(app);
		app.journal.state.attempts.open.set('demo-trainee', 'drill-1');
		const route = '/[lang=lang]/rules/[id]';
		for (const wish of [{}, { method: 'HEAD' }, { form: { a: 'b' } }])
			expect(await answer(testEvent(app, { route, person: 'demo-trainee', ...wish }))).toBe(
				'/en/closed-book'
			);
		expect(await answer(testEvent(app, { route: '/[lang=lang]/proving', person: 'demo-trainee' }))).toBe(
			'answered'
		);
		expect(await answer(testEvent(app, { route, person: 'demo-aprendiz' }))).toBe('answered');
		expect(await answer(testEvent(app, { route }))).toBe('answered');
	});
});

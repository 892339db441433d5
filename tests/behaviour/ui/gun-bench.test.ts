import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makePracticeDrill } from '$lib/drills';
import {
	count,
	filmMap,
	METRIC,
	metresPerSecond,
	millilitresPerMinute,
	millimetres,
	percent,
	type GunSettings
} from '$lib/engine';
import { filmMapView, gunControlsView } from '$lib/paper';
import { FilmMap, GunBench, type GunBenchView } from '$lib/ui';
import { demoShop } from '../drills/shop';

const shop = demoShop();
const drill = makePracticeDrill({ seed: 3, breadth: 2, shop, part: 'plan-the-passes' })!;
const settings: GunSettings = {
	'gun-distance': millimetres(100),
	'fan-width': millimetres(90),
	overlap: percent(10),
	'gun-speed': metresPerSecond(0.3),
	coats: count(2),
	flow: millilitresPerMinute(80)
};

/** What a browser without JavaScript gets. */
function html(lang: 'en' | 'es', over: Partial<GunBenchView>) {
	const reader = { lang, units: METRIC };
	const bench: GunBenchView = {
		address: '/en/practice/x/film-map',
		controls: gunControlsView(settings, drill.plan, reader),
		flow: { id: 'gun-flow', name: 'flow', kind: 'quantity', label: 'Flow', value: '100 mL/min' },
		map: filmMapView(filmMap(settings, { ...drill, shop })!, reader),
		missing: null,
		...over
	};
	const props = { bench, film: FilmMap, lang, formaction: '?/check' } as Record<string, unknown>;
	return render(GunBench as unknown as Component, { props }).body;
}

describe('the gun bench without JavaScript', () => {
	test('draws what the server hands over and posts what it is told', () => {
		const body = html('en', {});
		expect(body).toContain('role="img"');
		expect(body).toMatch(/<button[^>]*name="draw"[^>]*value="1"/);
		expect(body).toMatch(/<button[^>]*formaction="\?\/check"/);
		expect(body).toMatch(/<input[^>]*name="flow"[^>]*value="100 mL\/min"/);
		expect(body).toContain('Teaching model');
	});

	test('shows no slider, and no button that only a script answers', () => {
		const body = html('en', {});
		expect(body).not.toContain('type="range"');
		expect(body).not.toContain('type="button"');
	});

	test('says what is missing in place of a film', () => {
		const body = html('es', { map: null, missing: 'Llene los números.' });
		expect(body).toContain('Llene los números.');
		expect(body).not.toContain('role="img"');
	});

	test('tells in words and in a table all that is drawn', () => {
		const body = html('es', {});
		for (const label of ['Lo más delgado', 'Lo más grueso', 'En promedio', 'Lecturas a lo ancho del panel'])
			expect(body).toContain(label);
		expect(body.match(/<th scope="row"/g)).toHaveLength(11);
		expect(body).toContain('demasiado delgada para un lugar');
	});

	test('hatches each class of film, so that colour is not alone', () => {
		const body = html('en', {});
		for (const kind of ['too-thin', 'thin', 'thick', 'too-thick']) {
			const pattern = new RegExp(`<pattern id="([^"]+-${kind})"`).exec(body)?.[1];
			expect(pattern).toBeDefined();
			expect(body).toContain(`fill="url(#${pattern})"`);
		}
	});
});

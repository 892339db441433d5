import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makeTicket, type Breadth } from '$lib/drills';
import {
	celsius,
	METRIC,
	ovenOutcome,
	rightAnswers,
	si,
	solve,
	US,
	type Answers,
	type Job
} from '$lib/engine';
import { outcomeView } from '$lib/paper';
import { OvenDoor } from '$lib/ui';
import { breaking } from '../drills/breaking';
import { demoShop } from '../drills/shop';
import { job as sound } from '../engine/rules/bench';

const shop = demoShop();
const readers = [
	{ lang: 'en', units: METRIC },
	{ lang: 'es', units: METRIC },
	{ lang: 'en', units: US }
] as const;
const viewOf = (
	job: Job,
	answers: (right: Answers) => Answers,
	reader = readers[0] as (typeof readers)[number]
) => {
	const plan = solve(job, shop);
	return outcomeView(ovenOutcome(plan, answers(rightAnswers(plan)), job, shop), reader);
};
const html = (outcome: ReturnType<typeof outcomeView>, lang: 'en' | 'es') =>
	render(OvenDoor as unknown as Component, { props: { outcome, lang } as Record<string, unknown> }).body;
const set = (value: number) => ({ kind: 'quantity', value: si(value), typed: '' }) as const;

describe('what comes out of a cure that was too cool and too short', () => {
	const answers = (right: Answers): Answers => ({
		...right,
		'cure-temperature': set(celsius(30)),
		'cure-hold': set(60)
	});

	test('is told worst first, with the lesson of each rule', () => {
		const { defects } = viewOf(sound(), answers);
		const soft = defects.find(({ defect }) => defect === 'soft-film')!;
		expect(defects[0]!.severity).toBe(3);
		expect(soft).toMatchObject({ name: 'Soft film, under-cure', severityWord: 'severe' });
		expect(soft.from.map(({ way, lesson }) => [way, lesson])).toEqual([
			['too low', '/en/lessons/soak#cure-part-temperature'],
			['too low', '/en/lessons/soak#hold-time']
		]);
	});

	test('stands beside the window, in the reader’s units, with where each number comes from', () => {
		const cure = viewOf(sound(), answers).measures.find(({ id }) => id === 'cure-reached')!;
		expect(cure.stands).toBe('far too little cured');
		expect(cure.found).toMatch(/s$/);
		const text = JSON.stringify(cure.derivations);
		expect(text).toContain('Teaching model: activation energy');
		expect(text).toContain('common-practice');
		const heat = viewOf(sound(), answers, readers[2]).measures.find(({ id }) => id === 'part-heat')!;
		expect(heat.found).toBe('86\u00a0°F');
	});
});

test('a part that breaks a safety rule says so before all else, and how it reaches people', () => {
	const view = viewOf(sound(), (right) => ({ ...right, rags: { kind: 'choice', option: 'open-bin' } }));
	expect(view.stops).toMatchObject([{ rule: 'rags-in-metal-can', harm: 'fire and explosion' }]);
	const body = html(view, 'en');
	expect(body.indexOf('overrides everything')).toBeLessThan(body.indexOf('What comes out'));
});

test('what was left empty is named and says nothing', () => {
	const view = viewOf(sound(), (right) =>
		Object.fromEntries(Object.entries(right).filter(([id]) => id !== 'wet-film'))
	);
	expect(view.unset).toHaveLength(1);
	expect(view.measures.map(({ id }) => id)).not.toContain('film-built');
	expect(view.defects).toEqual([]);
});

test('a set-up without a fault says so, and that this is a teaching model', () => {
	const body = html(
		viewOf(sound(), (right) => right, readers[1]),
		'es'
	);
	expect(body).toContain('Modelo didáctico');
	expect(body).not.toContain('as wanted');
	expect(body).toContain('De esto no sale ningún defecto.');
	expect(body).not.toMatch(/undefined|NaN|Paro de seguridad/);
	expect(body).toMatch(/<td class="[^"]*gauge[^"]*">20\u00a0µm<\/td>/);
	expect(body).toMatch(/<td>sin número: se ve y se prueba<\/td>/);
});

const wordsIn = (text: string) => text.split(/\s+/).filter(Boolean).length;

test('no line is longer than sixty words, whatever is broken, in either language', () => {
	let lines = 0;
	for (const reader of readers)
		for (let seed = 0; seed < 60; seed += 1) {
			const { job } = makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop })!;
			const view = viewOf(
				job,
				() =>
					Object.fromEntries(
						solve(job, shop).fields.map(({ field, demands }) => [field, breaking({ field }, demands[0]!)])
					),
				reader
			);
			const told = [
				...view.stops.map(({ title, harm, outcome }) => `${title} (${harm}). ${outcome}`),
				...view.defects.flatMap(({ from }) =>
					from.map(({ title, way, outcome }) => `${title}: ${way}. ${outcome}`)
				),
				...view.measures.map(({ name, stands }) => `${name} ${stands}`)
			];
			lines += told.length;
			expect(told.filter((line) => wordsIn(line) > 60)).toEqual([]);
			expect(html(view, reader.lang)).not.toMatch(/undefined|NaN|Infinity/);
		}
	expect(lines).toBeGreaterThan(1000);
});

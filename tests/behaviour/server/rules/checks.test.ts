import { expect, test } from 'vitest';
import { celsius, DEMO_SHEETS, FORMULAS, METRIC, type Shop } from '$lib/engine';
import { checksView } from '$lib/server/rules/checks-view';

const shop: Shop = {
	on: '2026-03-02',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const view = (of: Shop = shop, lang: 'en' | 'es' = 'en') => checksView(of, { lang, units: METRIC });
const lineOf = (id: string) => view().computations.find((one) => one.id === id)!;

test('every formula has its line, named in both languages', () => {
	for (const lang of ['en', 'es'] as const) {
		const { computations } = view(shop, lang);
		expect(computations.map(({ id }) => id)).toEqual(expect.arrayContaining(FORMULAS.map(({ id }) => id)));
		for (const { title } of computations) expect(title).toMatch(/\S/);
	}
});

test('a checked formula says against what, how many, and how far off at most', () => {
	const { sources, facts, worst } = lineOf('dew-point');
	expect(sources).toContain('psychrolib, psychrometrics library');
	expect(facts).toBeGreaterThan(5);
	expect(worst).toMatchObject({
		share: expect.stringContaining('%'),
		expected: expect.stringContaining('°C')
	});
});

test('a definition nobody prints an example of says that it has no check', () => {
	const unchecked = view().computations.filter(({ facts }) => facts === 0);
	for (const { sources, worst } of unchecked)
		expect({ sources, worst }).toEqual({ sources: [], worst: undefined });
});

test('a shop value leaves the list of memory once the lead has set it', () => {
	const listed = (of: Shop) => view(of).unchecked.map(({ id }) => id);
	const set: Shop = { ...shop, settings: { 'cap.abs': { from: '2026-01-01', value: celsius(70) } } };
	expect(listed(shop)).toContain('cap.abs');
	expect(listed(set)).not.toContain('cap.abs');
});

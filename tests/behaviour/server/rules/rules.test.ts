import { describe, expect, test } from 'vitest';
import {
	DEMO_SHEETS,
	examplesByRule,
	exampleTickets,
	FORMULAS,
	METRIC,
	ruleById,
	RULES,
	SHOP_VALUES,
	SOURCES,
	US,
	celsius,
	type Shop
} from '$lib/engine';
import { numbersView } from '$lib/server/rules/numbers-view';
import { ruleList } from '$lib/server/rules/rule-list';
import { ruleView } from '$lib/server/rules/rule-view';
import type { DerivationView } from '$lib/ui';

const shop: Shop = {
	on: '2026-03-02',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const examples = examplesByRule(exampleTickets(shop));
const view = (id: string, reader: Parameters<typeof ruleView>[2] = { lang: 'en', units: METRIC }) =>
	ruleView(ruleById(id), examples.get(id) ?? [], reader);

const leaves = (steps: readonly DerivationView[]): DerivationView[] =>
	steps.flatMap((step) => [step, ...leaves(step.from ?? [])]);

test('the list holds every rule once, at the station where it is kept', () => {
	const listed = ruleList('es').flatMap(({ rules }) => rules.map(({ id }) => id));
	expect(listed.toSorted()).toEqual(RULES.map(({ id }) => id).toSorted());
});

describe.each(RULES.map(({ id }) => id))('%s', (id) => {
	test('says of every number whether it was read, and where, or that it is from memory', () => {
		const { expectations, provenance } = view(id);
		const numbers = leaves(expectations.shown.flatMap(({ derivations }) => derivations));
		for (const { provenance: from, label } of [...numbers, { provenance, label: 'the rule' }]) {
			expect(from, label).toBeDefined();
			if (from?.verification !== 'memory') expect(from?.verification.read, label).toMatch(/\S/);
		}
	});

	test('tells a visitor the same in Spanish', () => {
		const { title, why, evidence, outcome } = view(id, { lang: 'es', units: US });
		const rule = ruleById(id);
		expect([title, why, evidence, outcome]).toEqual([
			rule.title.es,
			rule.why.es,
			rule.evidence.es,
			rule.outcome.es
		]);
	});
});

test('a number of a data sheet says so, and one of the shop says whose', () => {
	const [hold] = view('hold-time').expectations.shown;
	expect(hold?.derivations[0]?.provenance?.origin).toBe('data-sheet');
	const [cool] = view('cool-before-handling').expectations.shown;
	expect(cool?.derivations[0]?.provenance).toMatchObject({
		origin: 'common-practice',
		verification: 'memory'
	});
});

describe('where the numbers come from', () => {
	const numbers = (settings: Shop['settings'] = {}) =>
		numbersView({ ...shop, settings }, { lang: 'en', units: METRIC });

	test('lists every shop value, formula and source', () => {
		const { values, formulas, sources } = numbers();
		expect(values.map(({ id }) => id)).toEqual(Object.keys(SHOP_VALUES));
		expect(formulas.map(({ id }) => id)).toEqual(FORMULAS.map(({ id }) => id));
		expect(sources.map(({ id }) => id)).toEqual(Object.keys(SOURCES));
	});

	test('shows a value the shop has set, and that it has', () => {
		const at = (settings?: Shop['settings']) =>
			numbers(settings).values.find(({ id }) => id === 'cure.cool-to');
		expect(at()).toMatchObject({ value: '40\u00a0°C', provenance: { origin: 'common-practice' } });
		expect(at({ 'cure.cool-to': { from: '2026-01-01', value: celsius(35) } })).toMatchObject({
			value: '35\u00a0°C',
			provenance: { origin: 'shop' }
		});
	});

	test('does not claim to have read what nobody read', () => {
		const { sources } = numbers();
		const unread = Object.entries(SOURCES).filter(([, { read }]) => (read as string) === 'nothing');
		expect(unread.length).toBeGreaterThan(0);
		expect(sources.filter(({ read }) => read === null).length).toBe(unread.length);
	});
});

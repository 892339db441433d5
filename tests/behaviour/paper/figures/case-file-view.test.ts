import type { Component } from 'svelte';
import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { makeTicket, type Figure } from '$lib/drills';
import { METRIC, ruleById, solve, US } from '$lib/engine';
import { caseFile } from '$lib/i18n';
import { caseFileView } from '$lib/paper';
import { describePicture, VIEWS } from '$lib/pictures';
import { CaseFile } from '$lib/ui';
import kind from '../../../../src/lib/drills/kinds/what-went-wrong';
import { seeded } from '../../../../src/lib/drills/random';
import { demoShop } from '../../drills/shop';

type Case = Extract<Figure, { kind: 'case-file' }>;

const shop = demoShop();
const EN = { lang: 'en', units: US } as const;
const ES = { lang: 'es', units: METRIC } as const;

const cases = Array.from({ length: 30 }, (_, seed) => {
	const { job } = makeTicket({ seed: seed * 7919, breadth: 1, shop })!;
	const plan = solve(job, shop);
	return plan.decision === 'accept' ? kind.make({ job, plan, shop }, seeded(seed)) : undefined;
})
	.filter((made) => made !== undefined)
	.map(({ steps }) => steps.map(({ figures }) => figures[0] as Case) as [Case, Case]);

const panel = VIEWS.map((view) => ({
	view,
	src: `/en/practice/some-attempt/panel?view=${view}`,
	shows: view
}));

describe('a case file in words', () => {
	test('there are some to look at', () => expect(cases.length).toBeGreaterThan(10));

	test('does not hang on the defect, nor on what is told afterwards', () => {
		for (const figures of cases)
			for (const figure of figures) {
				const other: Case = {
					...figure,
					panel: { defect: 'runs', severity: 1, seed: 0 },
					told: { causes: [], tests: [] }
				};
				expect(caseFileView(other, EN, panel)).toEqual(caseFileView(figure, EN, panel));
			}
	});

	test('says of each rule what is written and what was right', () => {
		for (const [figure] of cases) {
			const view = caseFileView(figure, EN, panel);
			expect(view.lines.map(({ title }) => title)).toEqual(
				figure.lines.map(({ rule }) => ruleById(rule).title.en)
			);
			for (const { says, saysWord, written, right } of view.lines) {
				expect(saysWord).toBe(caseFile.en.says[says]);
				expect(written === '').toBe(says === 'nothing');
				expect(right).not.toBe('');
			}
			expect('result' in view).toBe(false);
		}
	});

	test('says what the test came out with, for one rule and for several', () => {
		for (const [, figure] of cases) {
			const { result } = caseFileView(figure, ES, panel);
			const { evidence, title } = ruleById(figure.result!.rules[0]!);
			expect(result!.test).toBe(evidence.es);
			expect(result!.cameOut).toContain(title.es);
			expect(result!.cameOut).toContain(figure.result!.broken ? 'rompió' : 'cumpli');
		}
		const [, figure] = cases[0]!;
		const rules = ['hardener-by-volume', 'hardener-by-weight'];
		const { result } = caseFileView({ ...figure, result: { rules, broken: true } }, EN, panel);
		for (const rule of rules) expect(result!.cameOut).toContain(ruleById(rule).title.en);
		expect(result!.cameOut).toContain('one of these');
	});

	test('shows the rates it leans on, each as a teaching model with its ground', () => {
		for (const [figure] of cases) {
			const { rates } = caseFileView(figure, EN, panel);
			expect(rates.length).toBeGreaterThanOrEqual(5);
			for (const { label, value, provenance } of rates) {
				expect(label).toMatch(/^Teaching model: /);
				expect(value).toMatch(/\s%$/);
				expect(provenance).toMatchObject({ verification: 'memory' });
			}
		}
	});

	test('is drawn with every word of it, in both languages', () => {
		for (const reader of [EN, ES])
			for (const [, figure] of cases) {
				const view = caseFileView(figure, reader, panel);
				// the library's own type asks for a choice of overload that a generic component cannot make
				const { body } = render(CaseFile as unknown as Component<Record<string, unknown>>, {
					props: { view, lang: reader.lang }
				});
				const text = body.replaceAll(/<!--.*?-->|<[^>]+>/g, ' ').replaceAll('&amp;', '&');
				for (const { title, saysWord, written, right, testEnds } of view.lines)
					for (const word of [title, saysWord, written, right, testEnds]) expect(text).toContain(word);
				expect(text).toContain(view.result!.test);
				expect(text).toContain(view.result!.cameOut);
				expect(text).toContain(caseFile[reader.lang].modelNote);
			}
	});

	test('has pictures whose words name no defect', () => {
		for (const [figure] of cases)
			for (const view of VIEWS)
				expect(describePicture(figure.panel, view).en.toLowerCase()).not.toContain(
					figure.panel.defect.replaceAll('-', ' ')
				);
	});
});

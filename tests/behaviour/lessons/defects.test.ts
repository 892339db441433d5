import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { DEFECTS, METRIC, RULES, type DefectId } from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { LESSONS, lessonView } from '$lib/lessons';
import { prose } from '$lib/lessons/blocks';
import { demoShop } from './demo-shop';
import Shown from './Shown.svelte';

const lesson = LESSONS.find(({ slug }) => slug === 'defects')!;
const ids = Object.keys(DEFECTS) as DefectId[];
const of = (lang: (typeof LANGS)[number]) => lessonView(lesson, demoShop, { lang, units: METRIC });

describe.each(LANGS)('in %s', (lang) => {
	test('every defect of the catalogue stands in the lesson once, with its look and its first test', async () => {
		const Prose = await prose(lesson.folder, lang);
		const { body } = render(Shown, { props: { Prose, view: of(lang) } });
		const shown = [...body.matchAll(/<details id="defect-([a-z-]+)"/g)].map(([, id]) => id);
		expect(shown.toSorted()).toEqual(ids.toSorted());
	});

	test('a defect names each rule that breaks into it once', () => {
		const { defects } = of(lang);
		for (const id of ids) {
			const breaking = RULES.filter(({ breaks }) => Object.values(breaks).flat().includes(id));
			expect([id, defects[id]!.rules.map(({ href }) => href).toSorted()]).toEqual([
				id,
				breaking.map((rule) => `/${lang}/rules/${rule.id}`).toSorted()
			]);
		}
	});
});

test('the other lessons do not carry the catalogue', () => {
	const other = LESSONS.find(({ slug }) => slug === 'mixing')!;
	expect(lessonView(other, demoShop, { lang: 'en', units: METRIC }).defects).toEqual({});
});

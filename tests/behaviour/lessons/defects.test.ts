import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { DEFECTS, METRIC, RULES, type DefectId } from '$lib/engine';
import { LANGS } from '$lib/i18n';
import { LESSONS, lessonView } from '$lib/lessons';
import { prose } from '$lib/lessons/blocks';
import { LOOK_ALIKES } from '$lib/pictures';
import { TELLING_VIEW } from '../../../src/lib/lessons/telling-view';
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

	test('shows every defect drawn, plain and in the view that tells it apart, and says what is drawn', async () => {
		const Prose = await prose(lesson.folder, lang);
		const { body } = render(Shown, { props: { Prose, view: of(lang) } });
		for (const id of ids) {
			const [, sheet = ''] = body.split(`<details id="defect-${id}"`);
			const [outside = '', folded = ''] = sheet.split('<details');
			const drawn = (part: string) => /<img src="([^"]*)" alt="([^"]*)"/.exec(part) ?? [];
			const [[, plain = '', seen], [, telling = '', closer]] = [drawn(outside), drawn(folded)];
			const asked = (address: string) => {
				const { pathname, searchParams } = new URL(address.replaceAll('&amp;', '&'), 'http://shop');
				expect(pathname).toBe(`/${lang}/panels`);
				expect(Object.fromEntries(searchParams)).toMatchObject({ severity: '2', seed: '1' });
				return [searchParams.get('defect'), searchParams.get('view')];
			};
			expect(asked(plain)).toEqual([id, 'plain']);
			expect(asked(telling)).toEqual([id, TELLING_VIEW[id]]);
			expect(seen && closer && seen !== closer).toBe(true);
		}
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
	for (const other of LESSONS.filter((one) => one !== lesson))
		expect(lessonView(other, demoShop, { lang: 'en', units: METRIC }).defects).toEqual({});
});

test('a pair that one view tells apart is shown in it', () => {
	for (const { pair, toldApartIn } of LOOK_ALIKES)
		for (const id of pair) expect([id, TELLING_VIEW[id]]).toEqual([id, toldApartIn]);
});

import { describe, expect, test } from 'vitest';
import { LESSONS, shopExamples } from '$lib/lessons';
import { demoShop } from './demo-shop';

const texts = import.meta.glob<string>('/content/*/*.md', { eager: true, query: '?raw', import: 'default' });

/** Headings by depth, blocks with what they name, list items: all that a translation must not lose or add. */
function structure(text: string): string[] {
	return [...text.matchAll(/^(#{1,4}) |^(- |\d+\. )|<([A-Z]\w*)((?:\s+\w+="[^"]*")*)/gm)].map(
		([, heading, item, block, attributes = '']) => {
			if (heading) return heading;
			if (item) return 'item';
			const named = [...attributes.matchAll(/\s(id|rule|example|signal)="([^"]*)"/g)].map(
				([, , value]) => value
			);
			return [block, ...named].join(' ');
		}
	);
}

describe.each(LESSONS.map((lesson) => [lesson.folder, lesson] as const))('%s', (folder, lesson) => {
	const en = texts[`/content/${folder}/en.md`]!;
	const es = texts[`/content/${folder}/es.md`]!;

	test('has the same sections, blocks and checks in both languages, in the same order', () => {
		expect(structure(en).length).toBeGreaterThan(8);
		expect(structure(es)).toEqual(structure(en));
	});

	test('puts no section of a rule before its first heading, which would skip a depth', () => {
		const [before = ''] = en.split(/^## /m);
		expect(before).not.toContain('<RuleSection');
	});

	test('asks every check of its list once and no other', () => {
		const asked = [...en.matchAll(/<Check\s+id="([^"]*)"/g)].map(([, id]) => id);
		expect(asked.toSorted()).toEqual(lesson.checks.map(({ id }) => id).toSorted());
	});

	test('names only example jobs that call for the rule it speaks of', () => {
		const named = [...en.matchAll(/<Limit\s+rule="([^"]*)"\s+example="([^"]*)"/g)];
		const silent = named.filter(
			([, rule = '', job = '']) => !shopExamples(rule, demoShop).some(({ id }) => id === job)
		);
		expect(silent.map(([block]) => block)).toEqual([]);
	});

	test('leaves no paragraph in English', () => {
		const paragraphs = (text: string) =>
			text.split(/\n{2,}/).filter((one) => /^[\p{L}«"¿]/u.test(one) && one.split(' ').length > 8);
		const english = new Set(paragraphs(en));
		expect(english.size).toBeGreaterThan(3);
		expect(paragraphs(es).filter((one) => english.has(one))).toEqual([]);
	});
});

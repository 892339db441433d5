import { describe, expect, test } from 'vitest';
import { LESSONS } from '$lib/lessons';

const texts = import.meta.glob<string>('/content/*/*.md', { eager: true, query: '?raw', import: 'default' });

/** Headings by depth, blocks with what they name, list items: all that a translation must not lose or add. */
function structure(text: string): string[] {
	return [...text.matchAll(/^(#{1,4}) |^(- |\d+\. )|<([A-Z]\w*)((?:\s+\w+="[^"]*")*)/gm)].map(
		([, heading, item, block, attributes = '']) => {
			if (heading) return heading;
			if (item) return 'item';
			const named = [...attributes.matchAll(/(id|rule|example|signal)="([^"]*)"/g)].map(
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

	test('asks every check of its list once and no other', () => {
		const asked = [...en.matchAll(/<Check\s+id="([^"]*)"/g)].map(([, id]) => id);
		expect(asked.toSorted()).toEqual(lesson.checks.map(({ id }) => id).toSorted());
	});

	test('leaves no paragraph in English', () => {
		const paragraphs = (text: string) =>
			text.split(/\n{2,}/).filter((one) => /^[\p{L}«"¿]/u.test(one) && one.split(' ').length > 8);
		const english = new Set(paragraphs(en));
		expect(paragraphs(es).length).toBe(english.size);
		expect(paragraphs(es).filter((one) => english.has(one))).toEqual([]);
	});
});

import { describe, expect, test } from 'vitest';
import { assemble, type ContentFiles } from '../../../src/lib/lessons/assemble';
import { readFrontMatter } from '../../../src/lib/lessons/front-matter';
import { given, ratio } from '$lib/engine';
import { LESSONS, neighbours, type LessonSum } from '$lib/lessons';

const head = { title: 'Mixing', aim: 'You can mix.', station: 'mixing', version: 1 };
const check = { id: 'one', rule: 'stir-time', kind: 'field' } as const;
const sum: LessonSum = {
	id: 'hardener',
	asks: { en: 'How much?', es: '¿Cuánto?' },
	work: () => given('ratio', ratio(4), { en: 'Ratio', es: 'Relación' })
};
const files = (over: Partial<ContentFiles> = {}): ContentFiles => ({
	texts: { '/content/50-mixing/en.md': head, '/content/50-mixing/es.md': { ...head, title: 'Mezcla' } },
	checks: { '/content/50-mixing/checks.ts': [check] },
	sums: { '/content/50-mixing/sums.ts': [sum] },
	sources: {
		'/content/50-mixing/en.md': '<Limit rule="stir-time" example="steel-plates" />',
		'/content/60-spraying/en.md': '<Limit rule="gun-speed" />'
	},
	...over
});
const texts = (more: Record<string, unknown>) => files({ texts: { ...files().texts, ...more } });

describe('front matter', () => {
	test('is read where it is whole', () => {
		expect(readFrontMatter('x.md', head)).toEqual(head);
	});

	test.each([
		['no title', { ...head, title: undefined }, 'title'],
		['an empty aim', { ...head, aim: ' ' }, 'aim'],
		['a station that does not exist', { ...head, station: 'lunch' }, 'station'],
		['a version that is no whole number', { ...head, version: 1.5 }, 'version'],
		['a key nobody reads', { ...head, author: 'me' }, 'author'],
		['nothing at all', undefined, 'x.md']
	])('with %s is refused by name', (_what, metadata, named) => {
		expect(() => readFrontMatter('x.md', metadata)).toThrow(named);
		expect(() => readFrontMatter('x.md', metadata)).toThrow('x.md');
	});
});

describe('content', () => {
	test('becomes a lesson with both heads and its checks', () => {
		expect(assemble(files())).toEqual([
			{
				...{ slug: 'mixing', folder: '50-mixing', station: 'mixing', version: 1 },
				...{ checks: [check], sums: [sum] },
				names: { rules: ['stir-time'], examples: ['steel-plates'], values: [] },
				head: { en: { title: 'Mixing', aim: head.aim }, es: { title: 'Mezcla', aim: head.aim } }
			}
		]);
	});

	test.each<[string, ContentFiles, RegExp]>([
		['without Spanish', files({ texts: { '/content/50-mixing/en.md': head } }), /50-mixing\/es\.md/],
		['without checks', files({ checks: {} }), /50-mixing.*checks/],
		[
			'with two checks of one name',
			files({ checks: { '/content/50-mixing/checks.ts': [check, check] } }),
			/'one'/
		],
		[
			'with two sums of one name',
			files({ sums: { '/content/50-mixing/sums.ts': [sum, sum] } }),
			/'hardener'/
		],
		['whose versions differ', texts({ '/content/50-mixing/es.md': { ...head, version: 2 } }), /version/],
		['in a folder without number', texts({ '/content/mixing/en.md': head }), /NN-slug/],
		['in a language nobody reads', texts({ '/content/50-mixing/fr.md': head }), /fr\.md/],
		[
			'twice at one address',
			texts({ '/content/60-mixing/en.md': head, '/content/60-mixing/es.md': head }),
			/address 'mixing'/
		]
	])('%s is refused', (_what, wrong, named) => {
		expect(() => assemble(wrong)).toThrow(named);
	});
});

test('the lessons stand in the order of their numbers, each knowing its neighbours', () => {
	expect(LESSONS.map(({ folder }) => folder)).toEqual(LESSONS.map(({ folder }) => folder).toSorted());
	const [first, second] = LESSONS;
	expect(neighbours(first!.slug)).toEqual({ before: undefined, after: second });
	expect(neighbours(second!.slug).before).toBe(first);
	expect(neighbours('no-such')).toEqual({ before: undefined, after: undefined });
});

import { describe, expect, test } from 'vitest';
import { indexed, search } from '../../../../src/lib/lessons/search/search';

const entry = (title: string, text = '', kind = 'lesson') =>
	indexed({ kind, title, href: `/${title}`, text });
const found = (entries: ReturnType<typeof entry>[], query: string) =>
	search(entries, query).map(({ title }) => title);

describe('a query', () => {
	test.each([
		['coats', 'One coat'],
		['coat', 'Two coats'],
		['CAPAS', 'una capa'],
		['capa', 'Dos capas'],
		['relaciones', 'La relación'],
		['relacion', 'Las relaciones'],
		['passes', 'A pass'],
		['espesor humedo', 'Húmedo: el espesor'],
		['película', 'PELICULA'],
		['visc', 'Viscosity'],
		['p320', 'Paper P320']
	])('%s finds %s', (query, title) => {
		expect(found([entry('Something else'), entry(title)], query)).toEqual([title]);
	});

	test.each([
		['holes', 'hold the load'],
		['oat', 'coat'],
		['gas', 'glass'],
		['dew film', 'dew point']
	])('%s does not find %s', (query, title) => {
		expect(found([entry(title)], query)).toEqual([]);
	});

	test.each(['', '   ', '!?', '…'])('without a word (%j) finds nothing', (query) => {
		expect(found([entry('Anything')], query)).toEqual([]);
	});

	test('takes its words as they are, never as a pattern', () => {
		expect(found([entry('anything')], '.*')).toEqual([]);
		expect(found([entry('a (b')], '(b')).toEqual(['a (b']);
	});
});

test('what speaks of it most comes first, a title before a text, equals in the order given', () => {
	const entries = [
		entry('Racking', 'hang it'),
		entry('Masking', 'a hook, and a hook'),
		entry('The hook', 'hang it'),
		entry('Blasting', 'one hook'),
		entry('Loading', 'one hook')
	];
	expect(found(entries, 'hook')).toEqual(['The hook', 'Masking', 'Blasting', 'Loading']);
});

describe('the excerpt', () => {
	const excerptOf = (text: string, query: string) => search([entry('Title', text)], query)[0]!.excerpt;
	const long = `${'before '.repeat(40)}the Dew Point here ${'after '.repeat(40)}`.trim();

	test('quotes the place as it is written, cut at words, with signs where it is cut', () => {
		const quoted = excerptOf(long, 'dew');
		expect(quoted).toMatch(/^… before .*before the Dew Point here after .*after …$/);
		expect(quoted.length).toBeLessThan(180);
	});

	test('shows a short text whole', () => {
		expect(excerptOf('A short text on dew.', 'dew')).toBe('A short text on dew.');
	});

	test('begins at the beginning where only the title holds the word', () => {
		expect(excerptOf(long, 'title')).toMatch(/^before before/);
	});

	test('quotes a text that is one endless word', () => {
		expect(excerptOf('x'.repeat(400), 'x').length).toBeGreaterThan(0);
	});
});

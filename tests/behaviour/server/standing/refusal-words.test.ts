import { describe, expect, it } from 'vitest';
import { LANGS, refusals, refusalText } from '$lib/i18n';
import { REFUSALS, type RefusalCode } from '$lib/records';

describe.each(LANGS)('refusals in %s', (lang) => {
	// typed so that a code without words does not compile either
	const words: Record<RefusalCode, unknown> = refusals[lang].code;

	it('have words for every code of the record and for no other', () =>
		expect(Object.keys(words).sort()).toEqual([...REFUSALS].sort()));

	it.each(REFUSALS)('%s makes a sentence', (code) => {
		const text = refusalText({ code, detail: ['2026-03-09', 'lessons'] }, lang);
		expect(text).toMatch(/^\p{Lu}.{10,}\.$/u);
		expect(text).not.toMatch(/undefined|2026-03-09/);
	});
});

it('puts days and codes into words and leaves what was typed', () => {
	expect(refusalText({ code: 'retest-too-early', detail: ['2026-03-09'] }, 'en')).toContain('Mar 9, 2026');
	expect(refusalText({ code: 'parts-missing', detail: ['lessons', 'practical'] }, 'es')).toContain(
		'faltan lecciones y no hay práctica supervisada aceptada'
	);
	expect(refusalText({ code: 'job-out-of-period', detail: ['J-7'] }, 'en')).toContain('J-7');
});

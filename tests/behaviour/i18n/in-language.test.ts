import { describe, expect, it } from 'vitest';
import { inLanguage, isLang, LANGS, otherLang, say } from '$lib/i18n';

const at = (path: string) => new URL(path, 'http://shop.test');

describe('inLanguage', () => {
	it('keeps the path', () => {
		expect(inLanguage(at('/en/rules/pot-life'), 'es')).toBe('/es/rules/pot-life');
		expect(inLanguage(at('/en'), 'es')).toBe('/es');
	});
	it('keeps the query but for a form action', () => {
		expect(inLanguage(at('/es/record?person=p-1&page=2'), 'en')).toBe('/en/record?person=p-1&page=2');
		expect(inLanguage(at('/es/practice?/hand-in&station=mixing'), 'en')).toBe('/en/practice?station=mixing');
		expect(inLanguage(at('/es/practice?/hand-in'), 'en')).toBe('/en/practice');
	});
	it('never leads to another host', () => {
		expect(inLanguage(at('//evil.test/en'), 'es').startsWith('//')).toBe(false);
		expect(new URL(inLanguage(new URL('http://shop.test//evil.test'), 'es'), 'http://shop.test').host).toBe(
			'shop.test'
		);
	});
});

describe('languages', () => {
	it('knows its own and no other', () => {
		expect(LANGS.every(isLang)).toBe(true);
		expect(['', 'EN', 'fr', 'toString', 'en '].some(isLang)).toBe(false);
	});
	it('switches there and back', () => {
		for (const lang of LANGS) {
			expect(otherLang(lang)).not.toBe(lang);
			expect(otherLang(otherLang(lang))).toBe(lang);
		}
	});
	it('says a text in the language asked for', () => {
		expect(say({ en: 'Blast', es: 'Granallar' }, 'es')).toBe('Granallar');
	});
});

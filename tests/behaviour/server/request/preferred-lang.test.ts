import { describe, expect, it } from 'vitest';
import { preferredLang } from '$lib/server/request/preferred-lang';

describe('the language of a request', () => {
	it('is the one in the path', () => {
		expect(preferredLang('/es/sign-in', 'en-US')).toBe('es');
		expect(preferredLang('/en', 'es')).toBe('en');
	});

	it.each([
		['es-MX,es;q=0.9,en;q=0.8', 'es'],
		['en;q=0.4, es;q=0.5', 'es'],
		['fr-FR, de;q=0.9, es;q=0.1', 'es'],
		['es;q=0, en;q=0.1', 'en'],
		['ES', 'es'],
		['estonian', 'en'],
		['fr', 'en'],
		[';;;q=,', 'en'],
		[null, 'en']
	])('is otherwise the best wish of the browser: %s', (accepts, lang) => {
		expect(preferredLang('/', accepts)).toBe(lang);
	});
});

import { describe, expect, test } from 'vitest';
import { METRIC, US } from '$lib/engine';
import { chooseUnits, readerOf } from '../../../src/lib/server/reader';

type Jar = Parameters<typeof chooseUnits>[0]['cookies'];

/** A browser's cookies, as far as units go. */
function jar(first?: string) {
	let kept = first;
	const cookies = {
		get: () => kept,
		set: (_name: string, value: string) => {
			kept = value;
		}
	} as unknown as Jar;
	return { cookies, kept: () => kept };
}

const url = new URL('http://localhost/en');
const reading = (cookies: Jar, lang: 'en' | 'es') =>
	readerOf({ cookies, locals: { lang } as App.Locals }).units;

describe('units', () => {
	test('are those usual where the language is read, until somebody chooses', () => {
		expect(reading(jar().cookies, 'en')).toBe(US);
		expect(reading(jar().cookies, 'es')).toBe(METRIC);
		expect(reading(jar('furlongs').cookies, 'es')).toBe(METRIC);
	});

	test('stay as chosen, in either language', () => {
		const { cookies } = jar();
		expect(chooseUnits({ cookies, url }, 'metric')).toBe(true);
		expect(reading(cookies, 'en')).toBe(METRIC);
		expect(chooseUnits({ cookies, url }, 'us')).toBe(true);
		expect(reading(cookies, 'es')).toBe(US);
	});

	test.each(['', 'US', 'imperial', '__proto__'])('%j is no choice and changes nothing', (wish) => {
		const { cookies, kept } = jar('metric');
		expect(chooseUnits({ cookies, url }, wish)).toBe(false);
		expect(kept()).toBe('metric');
	});
});

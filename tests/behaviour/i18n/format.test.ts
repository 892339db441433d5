import { describe, expect, it } from 'vitest';
import { format } from '$lib/i18n';

describe('format.number', () => {
	it('keeps the decimal point in both languages', () => {
		expect(format.number(4.5, 'en')).toBe('4.5');
		expect(format.number(4.5, 'es')).toBe('4.5');
	});
	it('shows as many decimals as a gauge does', () => {
		expect(format.number(3, 'en', { atLeast: 1, atMost: 1 })).toBe('3.0');
		expect(format.number(0.12345, 'en')).toBe('0.12');
		expect(format.number(0.12345, 'en', { atLeast: 3 })).toBe('0.123');
	});
	it.each([NaN, Infinity, -Infinity])('refuses %s', (value) => {
		expect(() => format.number(value, 'en')).toThrow(RangeError);
	});
});

describe('format.date and dateTime', () => {
	it('writes the month in letters', () => {
		expect(format.date('2026-03-04', 'en')).toBe('Mar 4, 2026');
		expect(format.date('2026-03-04', 'es')).toMatch(/^4 mar\.? 2026$/);
	});
	it('keeps a calendar day where it is, whatever the time zone', () => {
		expect(format.date('2026-03-04', 'en', 'America/Los_Angeles')).toBe('Mar 4, 2026');
		expect(format.date('2026-03-04', 'en', 'Pacific/Auckland')).toBe('Mar 4, 2026');
	});
	it('shows an instant in the time zone asked for, on the 24-hour clock', () => {
		expect(format.dateTime('2026-11-25T22:02:58Z', 'en', 'UTC')).toBe('Nov 25, 2026, 22:02');
		expect(format.dateTime('2026-11-26T00:02:00Z', 'en', 'UTC')).toContain('00:02');
		expect(format.dateTime('2026-11-25T22:02:58Z', 'es', 'America/Chicago')).toContain('16:02');
	});
	it('refuses what is no date', () => {
		expect(() => format.date('next week', 'en')).toThrow(RangeError);
		expect(() => format.dateTime('', 'es')).toThrow(RangeError);
	});
});

describe('format.plural and lists', () => {
	const forms = { one: 'coat', other: 'coats' };
	it.each([
		[0, 'coats'],
		[1, 'coat'],
		[2, 'coats'],
		[1_000_000, 'coats']
	])('%i %s', (count, form) => {
		expect(format.plural(count, 'en', forms)).toBe(form);
		expect(format.plural(count, 'es', forms)).toBe(form);
	});
	it('joins with the language’s own words', () => {
		expect(format.list(['A', 'B', 'C'], 'es')).toBe('A, B y C');
		expect(format.either(['psi', 'bar'], 'en')).toBe('psi or bar');
		expect(format.either(['psi', 'bar'], 'es')).toBe('psi o bar');
	});
});

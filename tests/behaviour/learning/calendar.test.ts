import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, addMonths, daysBetween, isIsoDate } from '$lib/learning';

const iso = (at: number) => new Date(at).toISOString().slice(0, 10);
const DAY = 86_400_000;
const day = fc
	.integer({ min: Date.UTC(1999, 0, 1) / DAY, max: Date.UTC(2120, 0, 1) / DAY })
	.map((n) => ({ n, date: iso(n * DAY) }));

describe('months', () => {
	it.each([
		['2026-08-31', 6, '2027-02-28'],
		['2027-08-31', 6, '2028-02-29'],
		['2026-01-15', 24, '2028-01-15'],
		['2028-02-29', 12, '2029-02-28'],
		['2026-11-30', 1, '2026-12-30'],
		['2026-12-31', 2, '2027-02-28'],
		['2026-10-31', 0, '2026-10-31']
	])('%s + %i is %s', (from, months, to) => expect(addMonths(from, months)).toBe(to));

	it('never leaves the month that was meant', () =>
		fc.assert(
			fc.property(day, fc.nat(120), ({ date }, months) => {
				const [year, month] = date.split('-').map(Number) as [number, number];
				const meant = new Date(Date.UTC(year, month - 1 + months, 1));
				return addMonths(date, months).startsWith(iso(meant.getTime()).slice(0, 7));
			})
		));
});

describe('days', () => {
	it('are counted as the calendar of the platform counts them', () =>
		fc.assert(fc.property(day, day, (a, b) => daysBetween(a.date, b.date) === b.n - a.n)));

	it('are added likewise', () =>
		fc.assert(
			fc.property(day, fc.nat(900), ({ n, date }, days) => addDays(date, days) === iso((n + days) * DAY))
		));
});

describe('what is no day', () => {
	const none = [
		'2026-02-29',
		'2026-13-01',
		'2026-00-10',
		'2026-04-31',
		'2026-4-3',
		'',
		'today',
		'2026-01-01T00:00'
	];
	it.each(none)('%s', (text) => {
		expect(isIsoDate(text)).toBe(false);
		expect(() => addMonths(text, 1)).toThrow(RangeError);
		expect(() => daysBetween('2026-01-01', text)).toThrow(RangeError);
	});

	it.each(['2028-02-29', '2000-02-29', '2026-12-31'])('%s is one', (text) =>
		expect(isIsoDate(text)).toBe(true)
	);
	it('knows that 2100 has no 29 February', () => expect(isIsoDate('2100-02-29')).toBe(false));
});

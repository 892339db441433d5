import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
	commonestForm,
	formStatistics,
	itemsNeeded,
	itemStatistics,
	lengthened,
	type AnsweredSheet
} from '$lib/learning';

const sheet = (answers: Record<string, boolean>): AnsweredSheet => new Map(Object.entries(answers));
const times = (count: number, answers: Record<string, boolean>) =>
	Array.from({ length: count }, () => sheet(answers));

/** The numbers; a refusal is a fault of the test. */
function shown<T extends object>(found: T) {
	if ('refused' in found) throw new Error(`refused: ${JSON.stringify(found)}`);
	return found as Exclude<T, { refused: unknown }>;
}

describe('an item', () => {
	it('is not spoken of below 30 first attempts, and only as indicative below 100', () => {
		const ask = (count: number) => itemStatistics(times(count, { a: true, b: false }), 'a');
		expect(ask(0)).toEqual({ refused: 'too-few', n: 0, least: 30 });
		expect(ask(29)).toEqual({ refused: 'too-few', n: 29, least: 30 });
		expect(ask(30)).toMatchObject({ n: 30, share: 1, indicative: true });
		expect(ask(99)).toMatchObject({ indicative: true });
		expect(ask(100)).toMatchObject({ indicative: false });
	});

	it('is counted only where it was asked', () => {
		const sheets = [...times(30, { a: true, b: true }), ...times(500, { b: false })];
		expect(itemStatistics(sheets, 'a')).toMatchObject({ n: 30, right: 30 });
	});

	it('goes fully with the rest where whoever has it right has the rest right', () => {
		const sheets = [
			...times(20, { a: true, b: true, c: true }),
			...times(20, { a: false, b: false, c: false })
		];
		expect(shown(itemStatistics(sheets, 'a')).itemRest).toBeCloseTo(1, 12);
	});

	it('is pulled at once where those who have the rest right get it wrong', () => {
		const sheets = [...times(20, { a: true, b: false }), ...times(20, { a: false, b: true })];
		const found = shown(itemStatistics(sheets, 'a'));
		expect(found.itemRest).toBeCloseTo(-1, 12);
		expect(found.flags).toEqual(['pull']);
	});

	it('is looked at again where it hardly goes with the rest, but not where nothing can be compared', () => {
		const loose = [
			...times(10, { a: true, b: true }),
			...times(10, { a: true, b: false }),
			...times(10, { a: false, b: true }),
			...times(10, { a: false, b: false })
		];
		expect(shown(itemStatistics(loose, 'a'))).toMatchObject({ itemRest: 0, flags: ['weak'] });
		const alone = [...times(20, { a: true }), ...times(20, { a: false })];
		expect(shown(itemStatistics(alone, 'a'))).toMatchObject({ itemRest: null, itemTotal: null, flags: [] });
	});

	it.each([
		[29, ['hard']],
		[30, []],
		[95, []],
		[96, ['easy']]
	])('with %i of 100 right and nothing to compare has the flags %j', (right, flags) => {
		const sheets = [...times(right, { a: true }), ...times(100 - right, { a: false })];
		expect(shown(itemStatistics(sheets, 'a')).flags).toEqual(flags);
	});

	it('has no correlation where too few of the tickets asked anything else', () => {
		const wider = [...times(15, { a: true, b: true }), ...times(14, { a: false, b: false })];
		const found = shown(itemStatistics([...wider, ...times(10, { a: true })], 'a'));
		expect(found).toMatchObject({ n: 39, itemRest: null });
	});

	it('never correlates less with the whole, itself included, than with the rest', () => {
		const answers = fc.array(fc.tuple(fc.boolean(), fc.boolean(), fc.boolean()), {
			minLength: 30,
			maxLength: 60
		});
		fc.assert(
			fc.property(answers, (rows) => {
				const sheets = rows.map(([a, b, c]) => sheet({ a, b, c }));
				const { itemRest, itemTotal } = shown(itemStatistics(sheets, 'a'));
				if (itemRest !== null) expect(itemTotal).toBeGreaterThanOrEqual(itemRest - 1e-12);
			})
		);
	});
});

describe('a whole form', () => {
	// two items equally hard that agree on 30 of 40 sheets: their correlation is one half
	const parallel = [
		...times(15, { a: true, b: true }),
		...times(15, { a: false, b: false }),
		...times(5, { a: true, b: false }),
		...times(5, { a: false, b: true })
	];

	it('of two equally hard items is as reliable as one of them made twice as long', () => {
		expect(shown(itemStatistics(parallel, 'a')).itemRest).toBeCloseTo(0.5, 12);
		expect(shown(formStatistics(parallel)).alpha).toBeCloseTo(lengthened(0.5, 2), 12);
	});

	it('leaves no error where all its items agree, and has none left without an item of two', () => {
		const found = shown(
			formStatistics([...times(20, { a: true, b: true }), ...times(20, { a: false, b: false })])
		);
		expect(found.alpha).toBeCloseTo(1, 12);
		expect(found.sem).toBeCloseTo(0, 6);
		expect([...found.alphaWithout]).toEqual([
			['a', null],
			['b', null]
		]);
	});

	it('is more reliable without an item that goes against the others', () => {
		const sheets = [
			...times(20, { a: true, b: true, against: false }),
			...times(20, { a: false, b: false, against: true })
		];
		const { alpha, alphaWithout } = shown(formStatistics(sheets));
		expect(alpha).toBeLessThan(0);
		expect(alphaWithout.get('against')).toBeCloseTo(1, 12);
		expect(alphaWithout.get('a')).toBeNull();
	});

	it.each([
		['too few', parallel.slice(0, 29), { refused: 'too-few', n: 29, least: 30 }],
		['different questions', [...parallel, sheet({ a: true, c: true })], { refused: 'not-one-form' }],
		['a longer sheet', [...parallel, sheet({ a: true, b: true, c: true })], { refused: 'not-one-form' }],
		['one item', times(40, { a: true }), { refused: 'one-item' }],
		['no difference at all', times(40, { a: true, b: false }), { refused: 'no-spread' }]
	])('is not spoken of with %s', (_what, sheets, refusal) => {
		expect(formStatistics(sheets)).toEqual(refusal);
	});
});

describe('the commonest form', () => {
	it('is the set of questions asked most often, in whatever order', () => {
		const common = [sheet({ a: true, b: true }), sheet({ b: false, a: true })];
		expect(commonestForm([sheet({ c: true }), ...common])).toEqual(common);
		expect(commonestForm([])).toEqual([]);
	});
});

describe('the length of a form', () => {
	it('needed is the least that is reliable enough', () => {
		const alpha = fc.double({ min: 0.05, max: 0.95, noNaN: true });
		fc.assert(
			fc.property(fc.integer({ min: 2, max: 60 }), alpha, alpha, (items, has, wanted) => {
				const needed = itemsNeeded(items, has, wanted)!;
				expect(lengthened(has, needed / items)).toBeGreaterThanOrEqual(wanted - 1e-9);
				if (needed > 1) expect(lengthened(has, (needed - 1) / items)).toBeLessThan(wanted);
			})
		);
	});

	it('helps nothing where there is no reliability at all', () => {
		expect(itemsNeeded(5, 0, 0.8)).toBeNull();
		expect(itemsNeeded(5, -0.2, 0.8)).toBeNull();
	});

	it('refuses what is out of its range', () => {
		expect(() => lengthened(1, 2)).toThrow(RangeError);
		expect(() => lengthened(NaN, 2)).toThrow(RangeError);
		expect(() => lengthened(0.5, 0)).toThrow(RangeError);
		expect(() => itemsNeeded(0, 0.5, 0.8)).toThrow(RangeError);
		expect(() => itemsNeeded(5, 0.5, 1)).toThrow(RangeError);
	});
});

import type { AnsweredSheet } from './answered-sheet';
import { itemLimits } from './item-limits';
import { mean, variance } from './moments';
import { tooFew, type TooFew } from './too-few';

export type FormStatistics = {
	readonly n: number;
	/** Ids of what the form asks. */
	readonly items: readonly string[];
	/** Mean and sample standard deviation of the count of right answers. */
	readonly mean: number;
	readonly sd: number;
	/** KR-20, which is Cronbach's alpha of right and wrong: 1 at most, below 0 where answers go against each other. */
	readonly alpha: number;
	/** Standard error of measurement of one person's count, in answers. */
	readonly sem: number;
	/** Alpha of the form without each item; null where fewer than two are left or nothing varies. */
	readonly alphaWithout: ReadonlyMap<string, number | null>;
	readonly indicative: boolean;
};

export type FormRefusal = TooFew | { readonly refused: 'not-one-form' | 'one-item' | 'no-spread' };

type Column = readonly number[];

const totals = (columns: readonly Column[]): number[] =>
	columns[0]!.map((_, sheet) => columns.reduce((so, column) => so + column[sheet]!, 0));

/** k/(k−1)·(1 − Σ variances of the items / variance of the total), one divisor for both. */
function alphaOf(columns: readonly Column[]): number | null {
	const k = columns.length;
	const whole = k > 1 ? variance(totals(columns)) : 0;
	if (whole === 0) return null;
	return (k / (k - 1)) * (1 - columns.reduce((so, column) => so + variance(column), 0) / whole);
}

/** Statistics of a fixed form: every sheet must ask the same things. */
export function formStatistics(sheets: readonly AnsweredSheet[]): FormStatistics | FormRefusal {
	const n = sheets.length;
	const refused = tooFew(n);
	if (refused) return refused;
	const items = [...sheets[0]!.keys()];
	const same = sheets.every((sheet) => sheet.size === items.length && items.every((id) => sheet.has(id)));
	if (!same) return { refused: 'not-one-form' };
	if (items.length < 2) return { refused: 'one-item' };
	const columns = items.map((id) => sheets.map((sheet) => Number(sheet.get(id))));
	const alpha = alphaOf(columns);
	if (alpha === null) return { refused: 'no-spread' };
	const counts = totals(columns);
	const sd = Math.sqrt(variance(counts));
	return {
		n,
		items,
		mean: mean(counts),
		sd,
		alpha,
		sem: sd * Math.sqrt(1 - alpha),
		alphaWithout: new Map(items.map((id, at) => [id, alphaOf(columns.toSpliced(at, 1))])),
		indicative: n < itemLimits.firmFrom
	};
}

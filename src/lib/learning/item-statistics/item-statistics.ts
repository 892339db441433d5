import type { AnsweredSheet } from './answered-sheet';
import { itemFlags, type ItemFlag } from './item-flag';
import { itemLimits } from './item-limits';
import { correlation, mean } from './moments';
import { tooFew, type TooFew } from './too-few';

export type ItemStatistics = {
	/** Sheets that asked it, and how many had it right. */
	readonly n: number;
	readonly right: number;
	/** Difficulty: share right, 0 to 1. */
	readonly share: number;
	/** Correlation with the whole sheet, itself included, and with the rest of the sheet; null where nothing varies. */
	readonly itemTotal: number | null;
	readonly itemRest: number | null;
	/** True while there are too few for firm numbers. */
	readonly indicative: boolean;
	readonly flags: readonly ItemFlag[];
};

const shareOf = (answers: readonly boolean[]) => mean(answers.map(Number));

/** Correlations over the sheets that asked something else too; null below the least number of those. */
function correlations(sheets: readonly AnsweredSheet[], item: string) {
	const wider = sheets.filter(({ size }) => size > 1);
	if (tooFew(wider.length)) return { itemTotal: null, itemRest: null };
	const own = wider.map((sheet) => Number(sheet.get(item)));
	const total = wider.map((sheet) => shareOf([...sheet.values()]));
	const rest = wider.map((sheet) =>
		shareOf([...sheet].filter(([id]) => id !== item).map(([, right]) => right))
	);
	return { itemTotal: correlation(own, total), itemRest: correlation(own, rest) };
}

/**
 * Classical statistics of one item over first attempts. Sheets need not ask the same things: total and rest are shares
 * of what each sheet asked, which on a fixed form gives the same correlations as counts do.
 */
export function itemStatistics(sheets: readonly AnsweredSheet[], item: string): ItemStatistics | TooFew {
	const asking = sheets.filter((sheet) => sheet.has(item));
	const n = asking.length;
	const refused = tooFew(n);
	if (refused) return refused;
	const right = asking.filter((sheet) => sheet.get(item)).length;
	const { itemTotal, itemRest } = correlations(asking, item);
	return {
		n,
		right,
		share: right / n,
		itemTotal,
		itemRest,
		indicative: n < itemLimits.firmFrom,
		flags: itemFlags(right / n, itemRest)
	};
}

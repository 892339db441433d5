/** A whole number of items that only the last binary digit makes a fraction is that whole number. */
const SAME = 1e-9;

/**
 * Spearman–Brown turned round: how many items like these a form needs for a wanted reliability. Null where the form has
 * none at all: more of the same would not help.
 * @param items of the form as it is
 * @param alpha reliability of the form as it is, below 1
 * @param wanted above 0 and below 1
 * @throws RangeError outside of these
 */
export function itemsNeeded(items: number, alpha: number, wanted: number): number | null {
	if (!(items >= 1 && alpha < 1)) throw new RangeError(`items >= 1 and alpha < 1, got ${items}, ${alpha}`);
	if (!(wanted > 0 && wanted < 1)) throw new RangeError(`0 < wanted < 1, got ${wanted}`);
	if (alpha <= 0) return null;
	return Math.ceil((items * wanted * (1 - alpha)) / (alpha * (1 - wanted)) - SAME);
}

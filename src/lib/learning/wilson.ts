/** Half-width of the middle 95 % of the standard normal distribution. */
const Z95 = 1.959963984540054;

/**
 * Wilson's 95 % interval for the true share behind `right` of `n`, without continuity correction.
 * It supposes that n was fixed beforehand; a run that ended at its verdict makes it a rough guide only.
 * Source: Wilson 1927; Newcombe 1998, method 3.
 * @throws RangeError unless 0 <= right <= n and n >= 1
 */
export function wilsonInterval(right: number, n: number): { readonly low: number; readonly high: number } {
	if (!(n >= 1 && right >= 0 && right <= n)) throw new RangeError(`0 <= right <= n, got ${right} of ${n}`);
	const z2 = Z95 ** 2;
	const middle = (right + z2 / 2) / (n + z2);
	const half = (Z95 / (n + z2)) * Math.sqrt((right * (n - right)) / n + z2 / 4);
	return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}

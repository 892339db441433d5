const sum = (values: readonly number[]) => values.reduce((so, value) => so + value, 0);

export const mean = (values: readonly number[]): number => sum(values) / values.length;

/** Sum of products of the deviations from the mean, of two lists of one length. */
const together = (xs: readonly number[], ys: readonly number[]): number => {
	const [mx, my] = [mean(xs), mean(ys)];
	return sum(xs.map((x, at) => (x - mx) * (ys[at]! - my)));
};

/** Sample variance, divisor n − 1; needs at least two values. */
export const variance = (values: readonly number[]): number => together(values, values) / (values.length - 1);

// the sum of squares of equal fractions need not be exactly 0
const allEqual = (values: readonly number[]) => values.every((value) => value === values[0]);

/**
 * Product-moment correlation, −1 to 1; with right and wrong as 1 and 0 it is the point-biserial one. Null where either
 * list does not vary: there is nothing to go along with.
 */
export function correlation(xs: readonly number[], ys: readonly number[]): number | null {
	if (allEqual(xs) || allEqual(ys)) return null;
	return together(xs, ys) / Math.sqrt(together(xs, xs) * together(ys, ys));
}

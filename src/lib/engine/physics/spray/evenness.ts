export type Evenness = {
	readonly mean: number;
	readonly variance: number;
	/** Standard deviation over mean. */
	readonly variation: number;
	/** Thickest minus thinnest, over mean. */
	readonly peakToPeak: number;
};

/** How even a film is that was sampled at even distances. */
export function evenness(film: readonly number[]): Evenness {
	const mean = film.reduce((sum, value) => sum + value, 0) / film.length;
	const variance = film.reduce((sum, value) => sum + (value - mean) ** 2, 0) / film.length;
	const [thinnest, thickest] = film.reduce(
		([low, high], value) => [Math.min(low, value), Math.max(high, value)],
		[Infinity, -Infinity]
	);
	return { mean, variance, variation: Math.sqrt(variance) / mean, peakToPeak: (thickest - thinnest) / mean };
}

/** Arithmetic mean. Throws for no values or one that is not a number. */
export function sampleMean(values: readonly number[]): number {
	if (values.length === 0) throw new RangeError('sample-mean: there are no values');
	const rough = values.reduce((sum, value) => sum + value, 0) / values.length;
	// The second pass takes off what the first lost to rounding in a long sum of large numbers.
	const mean = rough + values.reduce((sum, value) => sum + (value - rough), 0) / values.length;
	if (!Number.isFinite(mean)) throw new RangeError('sample-mean: a value is not a number');
	return mean;
}

/** Standard deviation of a sample (n − 1). Throws for fewer than two values. */
export function sampleDeviation(values: readonly number[]): number {
	if (values.length < 2) throw new RangeError('sample-deviation: it takes two values or more');
	const mean = sampleMean(values);
	return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
}

/**
 * Trials without a single failure that show, at the given confidence, that at least a share of `rate` succeeds:
 * the smallest n with rate^n <= 1 - confidence (success-run theorem).
 * @throws RangeError unless both lie between 0 and 1
 */
export function cleanRunFor(confidence: number, rate: number): number {
	if (!(confidence > 0 && confidence < 1 && rate > 0 && rate < 1))
		throw new RangeError(`confidence and rate lie between 0 and 1, got ${confidence} and ${rate}`);
	// The margin keeps an exact whole number from being rounded up.
	return Math.ceil(Math.log(1 - confidence) / Math.log(rate) - 1e-9);
}

/** @throws RangeError for a seed that is no whole number of 0 or more */
export function assertSeed(seed: number): void {
	if (!(Number.isInteger(seed) && seed >= 0))
		throw new RangeError(`seed is a whole number from 0, got ${seed}`);
}

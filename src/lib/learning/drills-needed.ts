import type { OperatingCharacteristic } from './operating-characteristic';

/**
 * The number of drills within which a given share of runs has ended: 0.5 gives the median.
 * @param share above 0, up to 1
 */
export function drillsNeeded(characteristic: OperatingCharacteristic, share: number): number {
	if (!(share > 0 && share <= 1)) throw new RangeError(`share lies above 0 and up to 1, got ${share}`);
	let ended = 0;
	for (const [n, mass] of characteristic.endsAt.entries()) {
		ended += mass;
		// The sum of many small chances falls short of 1 by rounding alone.
		if (ended >= share - 1e-9) return n;
	}
	throw new Error('the chances of a run to end do not add up to 1');
}

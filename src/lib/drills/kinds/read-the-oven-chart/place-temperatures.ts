import { fraction, kelvin, seconds, wallTemperatureAfter, type Kelvin } from '$lib/engine';
import type { Wall } from './load';

/** A step of air, large enough to lose no digits; the answer to it is a share, whatever its size. */
const [BEFORE, AFTER] = [kelvin(300), kelvin(400)];

/**
 * How a place follows the air, sample by sample: `wallTemperatureAfter` for each step of the air, added up, which is
 * exact because conduction is linear. Between samples the air counts as the mean of both.
 * @param place 0 the core, 1 the face
 * @param every seconds between samples
 * @throws RangeError when asked, where `every` is too short for a wall that thick
 */
export function follower(wall: Wall, place: 0 | 1, every: number) {
	// worked out as far as a run is long
	const shares = [0];
	const share = (samples: number) => (shares[samples] ??= answer(wall, place, samples * every));
	return (start: Kelvin, air: readonly number[]): number[] => {
		const means = air.slice(1).map((one, at) => (one + air[at]!) / 2);
		const steps = means.map((mean, at) => mean - (at ? means[at - 1]! : start));
		return air.map((_, at) => {
			let reached: number = start;
			for (let since = 0; since < at; since += 1) reached += steps[since]! * share(at - since);
			return reached;
		});
	};
}

/** Share of a step of the air that a place has followed after a time. */
function answer(wall: Wall, place: 0 | 1, spent: number): number {
	const reached = wallTemperatureAfter.at({
		...wall,
		start: BEFORE,
		air: AFTER,
		spent: seconds(spent),
		place: fraction(place)
	});
	return (reached - BEFORE) / (AFTER - BEFORE);
}

/**
 * The last number at which a condition still holds, going from `near`, where it does, to `far`, where it no longer
 * does; by halving down to the last binary digit. The two may stand either way round.
 */
export function lastWhere(holds: (at: number) => boolean, near: number, far: number): number {
	let [held, lost] = [near, far];
	for (;;) {
		const middle = (held + lost) / 2;
		if (middle === held || middle === lost) return held;
		if (holds(middle)) held = middle;
		else lost = middle;
	}
}

import type { Place } from '../surface';
import { grain } from './noise';

/** The point of the unit circle after a share of a full turn, by halves of a rational circle: exact alike everywhere. */
export function direction(turn: number): Place {
	const whole = turn - Math.floor(turn);
	const t = (whole % 0.5) * 4 - 1;
	const sign = whole < 0.5 ? 1 : -1;
	return { x: (sign * -2 * t) / (1 + t * t), y: (sign * (1 - t * t)) / (1 + t * t) };
}

/**
 * A wandering line from a place on.
 *
 * @param turn where it heads, share of a full turn
 * @param length mm
 * @param bend how much it may turn at each of its steps, share of a full turn
 */
export function way(
	from: Place,
	turn: number,
	length: number,
	bend: number,
	seed: number,
	steps = 8
): Place[] {
	const line: Place[] = [from];
	let [heading, at] = [turn, from];
	for (let k = 0; k < steps; k++) {
		heading += (grain(seed, k, 41) - 0.5) * 2 * bend;
		const ahead = direction(heading);
		at = { x: at.x + (ahead.x * length) / steps, y: at.y + (ahead.y * length) / steps };
		line.push(at);
	}
	return line;
}

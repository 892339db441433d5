import type { Fraction } from '../units/dimension';

export type Uniformity = {
	/** Variance of the film over one stroke spacing, where a single pass is 1 thick at its centre. */
	readonly variance: number;
	/** Standard deviation over mean. */
	readonly variation: number;
	/** Thickest minus thinnest, over mean. */
	readonly peakToPeak: number;
};

const SAMPLES = 4000;

/**
 * How even a film of parallel strokes is, from a fan that deposits (1 − (2x/w)²)^(β − 1) across its width w: β = 2 is the
 * parabola of the literature. A teaching model: which overlap is best depends on the fan, and 50 % is shop practice, not
 * its optimum. `overlap` 0 to 0.9, `beta` 1.5 to 10.
 */
export function fanUniformity(overlap: Fraction, beta = 2): Uniformity {
	if (!(overlap >= 0 && overlap <= 0.9))
		throw new RangeError(`fan-uniformity: overlap = ${overlap} is outside 0 to 0.9`);
	if (!(beta >= 1.5 && beta <= 10))
		throw new RangeError(`fan-uniformity: beta = ${beta} is outside 1.5 to 10`);
	const spacing = 1 - overlap;
	const reach = Math.ceil(1 / spacing);
	const pass = (x: number) => (Math.abs(x) < 0.5 ? (1 - (2 * x) ** 2) ** (beta - 1) : 0);
	const film = Array.from({ length: SAMPLES }, (_, sample) => {
		const x = (spacing * sample) / SAMPLES;
		let sum = 0;
		for (let stroke = -reach; stroke <= reach; stroke++) sum += pass(x - stroke * spacing);
		return sum;
	});
	const mean = film.reduce((sum, value) => sum + value, 0) / SAMPLES;
	const variance = film.reduce((sum, value) => sum + (value - mean) ** 2, 0) / SAMPLES;
	return {
		variance,
		variation: Math.sqrt(variance) / mean,
		peakToPeak: (Math.max(...film) - Math.min(...film)) / mean
	};
}

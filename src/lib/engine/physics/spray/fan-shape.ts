/**
 * What a fan lays across its width, as a share of the film in its middle, by the β distribution: (1 − (2x/w)²)^(β − 1) with x
 * in widths from the middle. β 1.5 is an ellipse, 2 the parabola; the larger, the more pointed. None outside the width.
 */
export const fanShape = (x: number, beta: number): number =>
	Math.abs(x) < 0.5 ? (1 - (2 * x) ** 2) ** (beta - 1) : 0;

/** Steps up to a smoother power, and then along it, that leave less than a double can tell apart. */
const RAISED = 4;
const STEPS = 60;

/**
 * Area under the shape per width: ½·∫cosⁿ from −π/2 to π/2 with n = 2β − 1, as ∫cosⁿ = (n + 2)/(n + 1) · ∫cosⁿ⁺², whose
 * higher powers end so smoothly that the midpoint rule finds them to the last digits.
 */
export function fanShapeArea(beta: number): number {
	let power = 2 * beta - 1;
	let factor = Math.PI / (2 * STEPS);
	for (let step = 0; step < RAISED; step++) {
		factor *= (power + 2) / (power + 1);
		power += 2;
	}
	let sum = 0;
	for (let step = 0; step < STEPS; step++) sum += Math.sin((Math.PI * (step + 0.5)) / STEPS) ** power;
	return factor * sum;
}

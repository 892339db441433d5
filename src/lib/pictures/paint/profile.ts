/** Shapes as functions of how far out one is, so that a defect reads as what it is. */

/** 0 below `from`, 1 above `to`, eased between; `from` may be the larger. */
export function step(from: number, to: number, at: number): number {
	const t = Math.min(1, Math.max(0, (at - from) / (to - from)));
	return t * t * (3 - 2 * t);
}

/** 1 in the middle, 0 from r = 1 on, round on top. */
export const dome = (r: number): number => (r >= 1 ? 0 : (1 - r * r) * (1 - r * r));

/** 1 at `at`, 0 from `half` away from it on. */
export const ring = (r: number, at: number, half: number): number => dome(Math.abs(r - at) / half);

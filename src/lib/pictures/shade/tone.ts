/**
 * Linear light to a display value, 0 to 255, by square roots alone: the power in the standard curve may differ in
 * its last digits between engines. Stays within 1 of 255 of the sRGB curve (IEC 61966-2-1) except below 0.003.
 */
function encode(light: number): number {
	const a = Math.sqrt(light);
	const b = Math.sqrt(a);
	const c = Math.sqrt(b);
	return Math.round(
		255 * Math.min(1, Math.max(0, 0.662002687 * a + 0.68412206 * b - 0.323583601 * c - 0.022541147 * light))
	);
}

const STEPS = 4096;
const TABLE = Uint8Array.from({ length: STEPS + 1 }, (_, k) => encode(k / STEPS));

/** Display value of linear light; what is brighter than white is white. */
export const tone = (light: number): number =>
	TABLE[light >= 1 ? STEPS : light <= 0 ? 0 : (light * STEPS + 0.5) | 0]!;

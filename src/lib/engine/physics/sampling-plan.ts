import type { SquareMetre } from '../units/dimension';

const FOOT_SQUARED = 0.3048 ** 2;
export const SPOTS_PER_AREA = 5;
export const READINGS_PER_SPOT = 3;

/** Areas of 10 m² (100 ft²) to measure on so much coated surface (SSPC-PA 2 §8), with their spots and readings. */
export function samplingPlan(coated: SquareMetre): { areas: number; spots: number; readings: number } {
	if (!(coated > 0)) throw new RangeError(`sampling-plan: coated = ${coated} is not above 0 m²`);
	const squareFeet = coated / FOOT_SQUARED - 1e-6;
	const areas =
		squareFeet <= 300
			? Math.ceil(squareFeet / 100)
			: squareFeet <= 1000
				? 3
				: 3 + Math.ceil((squareFeet - 1000) / 1000);
	return { areas, spots: areas * SPOTS_PER_AREA, readings: areas * SPOTS_PER_AREA * READINGS_PER_SPOT };
}

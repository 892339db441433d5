import type { Dimension } from '../units/dimension';
import { TEACHING } from './teaching';

/** How bad: 1 slight, just outside; 2 clear, outside; 3 severe, far outside. */
export type Degree = 1 | 2 | 3;

type Overstep = {
	/** Distance outside the limit, SI, 0 or more. */
	readonly beyond: number;
	readonly limit: number;
	/** How far still counts as just outside, SI. */
	readonly amber: number;
	readonly dimension: Dimension;
};

/**
 * Amber is 1, red is 2, and three ambers or half of the limit are 3; for temperatures a fixed distance stands for the
 * half. Never falls as `beyond` grows.
 */
export function degreeOf({ beyond, limit, amber, dimension }: Overstep): Degree {
	if (amber > 0 && beyond <= amber) return 1;
	const half = Math.abs(limit) * TEACHING.farInLimits.value;
	const far = dimension === 'temperature' ? TEACHING.farTemperature.value : half;
	const manyAmbers = amber > 0 && beyond >= amber * TEACHING.farInAmbers.value;
	// there is no half of a limit that is nothing
	return manyAmbers || (far > 0 && beyond >= far) ? 3 : 2;
}

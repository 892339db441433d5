import { operatingCharacteristic } from './operating-characteristic';
import type { SequentialPlan } from './sequential-plan';

type Limits = Pick<SequentialPlan, 'p0' | 'p1' | 'alpha' | 'beta'>;

/**
 * The shortest last drill, with its number of right ones, at which the exact risks of the truncated test keep to
 * alpha and beta; null where none up to `longest` does.
 */
export function shortestTruncation(limits: Limits, longest: number): SequentialPlan | null {
	for (let truncateAt = 1; truncateAt <= longest; truncateAt += 1) {
		for (let passAtTruncation = 1; passAtTruncation <= truncateAt; passAtTruncation += 1) {
			const plan = { ...limits, truncateAt, passAtTruncation };
			if (operatingCharacteristic(plan, limits.p0).pass > limits.alpha) continue;
			// Asking for more right drills from here on only lets more good people fail.
			if (operatingCharacteristic(plan, limits.p1).fail <= limits.beta) return plan;
			break;
		}
	}
	return null;
}

import { lowestCap } from '../../plan/part-cap';
import type { OutcomeMeasure } from '../outcome';
import { allSet, amount, type PutIn } from '../put-in';
import { standingOf } from '../standing';

/** The hottest the parts get, beside what the most delicate of them takes. */
export function partHeat(given: PutIn): OutcomeMeasure | undefined {
	if (!allSet(given, ['bake-out-temperature', 'cure-temperature'])) return undefined;
	const set = (['bake-out-temperature', 'cure-temperature'] as const)
		.map((id) => amount(given, id, 'temperature'))
		.filter((one) => one !== undefined);
	const [hottest] = set.toSorted((one, other) => other.value - one.value);
	const cap = lowestCap(given.seen);
	if (!hottest || !cap) return undefined;
	return {
		id: 'part-heat',
		kind: 'quantity',
		value: hottest,
		wanted: { min: null, max: cap },
		...standingOf(hottest.value, -Infinity, cap.value, 'temperature')
	};
}

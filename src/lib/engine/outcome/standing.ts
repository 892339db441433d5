import type { Dimension } from '../units/dimension';
import type { Broken } from './broken';
import { degreeOf } from './degree';
import type { Side, Standing } from './outcome';
import { TEACHING } from './teaching';
import { SAME } from '../units/same';

export const AS_WANTED: Standing = { degree: 0, side: null };

/**
 * Where a number stands to its limits (SI, infinite where there is none). Just outside is a share of the limit; a
 * temperature limit of a part has no such room.
 */
export function standingOf(value: number, min: number, max: number, dimension: Dimension): Standing {
	const [low, high] = [min - value, value - max];
	const [side, beyond, limit]: [Side, number, number] = high > low ? ['high', high, max] : ['low', low, min];
	if (beyond <= SAME * Math.abs(limit)) return AS_WANTED;
	const amber = dimension === 'temperature' ? 0 : Math.abs(limit) * TEACHING.nearInLimits.value;
	return { degree: degreeOf({ beyond, limit, amber, dimension }), side };
}

/** Which way a broken rule moves a measure; undefined where it does not touch it. */
export type Pull = (broken: Broken) => Side | undefined;

/** The worst that any broken rule does to a measure; of two equally bad ones the low side, which looks sound longest. */
export function worstOf(broken: readonly Broken[], pull: Pull): Standing {
	let worst = AS_WANTED;
	for (const one of broken) {
		const side = pull(one);
		if (side && (one.degree > worst.degree || (one.degree === worst.degree && side === 'low')))
			worst = { degree: one.degree, side };
	}
	return worst;
}

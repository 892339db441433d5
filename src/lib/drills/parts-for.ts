import { ruleById } from '$lib/engine';
import { DRILL_KINDS } from './kinds';
import type { DrillKind } from './kinds/kind';
import type { PracticePart } from './practice';

/** Drills that ask what these rules are about, shortest first; without one, the stations the rules belong to. */
export function partsFor(rules: readonly string[]): PracticePart[] {
	const own = rules.map(ruleById);
	const kinds: readonly DrillKind[] = DRILL_KINDS;
	const fitting = kinds.filter(
		({ asks, tells }) => tells !== 'count' && own.some(({ field }) => asks.includes(field))
	);
	return fitting.length
		? fitting.map(({ id }) => id as PracticePart)
		: [...new Set(own.map(({ station }) => station))];
}

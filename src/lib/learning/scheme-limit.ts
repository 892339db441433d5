import type { Provenance, Text } from '$lib/engine';

/** One editable number of the scheme: what it is, what it may be, and why it is what it is. */
export type SchemeLimit = {
	readonly value: number;
	/** Smallest and largest value the shop may choose, and the step it is set in. */
	readonly min: number;
	readonly max: number;
	readonly step: number;
	readonly unit: 'share' | 'drills' | 'times' | 'hours' | 'days' | 'months';
	readonly label: Text;
	readonly because: Text;
	readonly provenance: Provenance;
};

/** All limits are decisions of the shop, offered as a start; no law and no standard sets them for this trade. */
const policy: Provenance = { origin: 'shop', verification: 'memory' };

/** A limit the shop decides; the triple is its smallest and largest value and its step. */
export const policyLimit = (
	unit: SchemeLimit['unit'],
	value: number,
	[min, max, step]: readonly [number, number, number],
	words: Pick<SchemeLimit, 'label' | 'because'>
): SchemeLimit => ({ value, min, max, step, unit, ...words, provenance: policy });

import type { FieldId, Station } from '$lib/engine';
import type { Figure } from './figures';

/** One page of a drill: what is looked at and what is filled in. */
export type DrillStep = {
	readonly station: Station;
	readonly fields: readonly FieldId[];
	readonly figures: readonly Figure[];
};

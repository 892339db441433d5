import type { FieldId, Text } from '$lib/engine';

/** A short drill: one sort of choice on a ticket, a few minutes of practice. */
export type DrillKind = {
	readonly id: string;
	readonly title: Text;
	readonly about: Text;
	/** Fields it asks, where the ticket calls for them. */
	readonly asks: readonly FieldId[];
	/** A ticket suits only where it calls for all of these. */
	readonly needs: readonly FieldId[];
};

import type { Shop, Text, Traced } from '$lib/engine';

/** A calculation of the trade worked out in a lesson, on numbers invented for it. */
export type LessonSum = {
	/** Unique in its lesson. */
	readonly id: string;
	/** What is asked, on which job: one sentence. */
	readonly asks: Text;
	/**
	 * Works it out with the engine. Several answers stand one below the other, what they share is listed once. Takes from
	 * the shop what the trade leaves to the shop.
	 */
	readonly work: (shop: Shop) => Traced | readonly Traced[];
	/** Its small shares are of vapour in air, which the trade reads in parts per million. */
	readonly inAir?: true;
	/** What the engine's verdict on these numbers means at the bench, where it has one. */
	readonly so?: () => Text;
};

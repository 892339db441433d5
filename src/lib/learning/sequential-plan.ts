/**
 * A truncated sequential probability ratio test on drills that are right or wrong.
 * Source: Wald 1947, Sequential Analysis (from memory); the same algebra was read in the R package gsDesign.
 */
export type SequentialPlan = {
	/** Share of right drills that must not pass, between 0 and 1. */
	readonly p0: number;
	/** Share of right drills that should pass, above p0 and below 1. */
	readonly p1: number;
	/** Accepted chance that a person at p0 passes, between 0 and 1. */
	readonly alpha: number;
	/** Accepted chance that a person at p1 fails, between 0 and 1. */
	readonly beta: number;
	/** First drill at which a verdict may fall; 1 where it is left out. */
	readonly firstLook?: number;
	/** Last drill of a run, a whole number of 1 or more. */
	readonly truncateAt: number;
	/** Right drills that pass at the last drill, fewer fail; null leaves such a run undecided. */
	readonly passAtTruncation: number | null;
};

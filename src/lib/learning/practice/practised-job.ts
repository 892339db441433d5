import type { Skill } from '$lib/engine';

/** How much a job holds to notice: 1 one thing at most, 3 several. */
export type JobBreadth = 1 | 2 | 3;

/** One practice job as it was handed in. */
export type PractisedJob = {
	/** What was practised: a station or a short drill. */
	readonly part: string;
	readonly breadth: JobBreadth;
	/** What that part trains first; left out where it mixes many skills. */
	readonly skill?: Skill | undefined;
	/** Ids of all rules the job asked. */
	readonly rules: readonly string[];
	/** Those of them that were found broken when the person first had it checked. */
	readonly findings: readonly string[];
};

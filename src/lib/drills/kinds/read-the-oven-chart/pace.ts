/** How a recorder writes, and how near its chart can be read. Seconds. */
export type Pace = {
	readonly every: number;
	readonly division: number;
	/** A division, and never less than a practised reader is asked for. */
	readonly tolerance: number;
};

/** Samples on one chart: fewer draw corners where the walls drew curves. */
export const FEWEST_SAMPLES = 50;
export const MOST_SAMPLES = 121;

/** Quick to slow: a chart of half an hour, of one hour, of two, of four. */
export const PACES: readonly Pace[] = [
	{ every: 15, division: 60, tolerance: 120 },
	{ every: 30, division: 60, tolerance: 120 },
	{ every: 60, division: 120, tolerance: 120 },
	{ every: 120, division: 300, tolerance: 300 }
];

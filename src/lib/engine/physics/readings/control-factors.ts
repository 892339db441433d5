type Factors = {
	/** Times the mean range: limits of the means. */
	readonly mean: number;
	/** Times the mean range: lower and upper limit of the ranges. */
	readonly low: number;
	readonly high: number;
};

/** Three-sigma factors A₂, D₃ and D₄ by the number of readings in a subgroup. */
export const CONTROL_FACTORS: Readonly<Record<number, Factors>> = {
	2: { mean: 1.88, low: 0, high: 3.267 },
	3: { mean: 1.023, low: 0, high: 2.574 },
	4: { mean: 0.729, low: 0, high: 2.282 },
	5: { mean: 0.577, low: 0, high: 2.114 },
	6: { mean: 0.483, low: 0, high: 2.004 },
	7: { mean: 0.419, low: 0.076, high: 1.924 },
	8: { mean: 0.373, low: 0.136, high: 1.864 },
	9: { mean: 0.337, low: 0.184, high: 1.816 },
	10: { mean: 0.308, low: 0.223, high: 1.777 }
};

/** Fewer subgroups or values than this say nothing about what is normal. */
export const FEWEST_TO_CHART = 10;

/** A line of a control chart: its limits, its middle, and which of its values lie outside, counted from 0. */
export type ControlLine = {
	readonly lower: number;
	readonly centre: number;
	readonly upper: number;
	readonly outside: readonly number[];
};

/** Limits about the centre, and the values beyond them. A value exactly at a limit is inside. */
export const controlLine = (
	values: readonly number[],
	{ lower, centre, upper }: Omit<ControlLine, 'outside'>
): ControlLine => ({
	lower,
	centre,
	upper,
	outside: values.flatMap((value, at) => (value < lower || value > upper ? [at] : []))
});

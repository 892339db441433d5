/** Lines of one axis: where they lie along it, 0 to 1, and the numbers at the numbered ones. */
export type Axis = {
	readonly from: number;
	readonly to: number;
	readonly division: number;
	readonly small: readonly number[];
	readonly numbered: readonly { readonly at: number; readonly number: number }[];
};

/** Smallest division and the step between numbers. */
export type Ruling = { readonly division: number; readonly numbered: number };

const steps = (from: number, to: number, step: number) =>
	Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);

/** An axis over these numbers, from one division's mark to another's. */
export function axis(lowest: number, highest: number, { division, numbered }: Ruling): Axis {
	const from = Math.floor(lowest / division) * division;
	const to = Math.ceil(highest / division) * division;
	const along = (number: number) => (number - from) / (to - from);
	const first = Math.ceil(from / numbered) * numbered;
	return {
		from,
		to,
		division,
		small: steps(from, to, division).map(along),
		numbered: steps(first, Math.floor(to / numbered) * numbered, numbered).map((number) => ({
			at: along(number),
			number
		}))
	};
}

import type { Kelvin, Second } from '../../units/dimension';

/** Readings of one thermocouple, in order. */
export type Readings = { readonly times: readonly Second[]; readonly temperatures: readonly Kelvin[] };

/** A stretch between two readings during which the straight line between them stays inside a window. */
export type Span = {
	readonly from: number;
	readonly to: number;
	/** Temperatures at its two ends. */
	readonly first: number;
	readonly last: number;
};

/** Throws a RangeError where there are not two readings or more, each later than the one before. */
function refuseUnsorted(id: string, { times, temperatures }: Readings) {
	if (times.length !== temperatures.length)
		throw new RangeError(`${id}: times and temperatures differ in length`);
	if (times.length < 2) throw new RangeError(`${id}: times = ${times.join()} must be two readings or more`);
	for (let at = 1; at < times.length; at++)
		if (!(times[at]! > times[at - 1]!))
			throw new RangeError(`${id}: times must rise, ${times[at]} follows ${times[at - 1]} (SI)`);
}

/** Shares of the way from `first` to `last` between which a straight line lies inside the window; empty if from ≥ to. */
function inside(first: number, last: number, low: number, high: number): [from: number, to: number] {
	if (first === last) return first >= low && first <= high ? [0, 1] : [1, 0];
	const share = (at: number) => (at - first) / (last - first);
	const [enter, leave] = first < last ? [low, high] : [high, low];
	return [Math.max(0, share(enter)), Math.min(1, share(leave))];
}

/**
 * Where the readings, joined by straight lines, lie from `low` to `high`, both inside. Stretches that touch at a reading
 * are told apart here. Throws a RangeError, naming `id`, for readings that are not in order.
 */
export function spansInside(id: string, readings: Readings, low: number, high: number): readonly Span[] {
	refuseUnsorted(id, readings);
	const { times, temperatures } = readings;
	const spans: Span[] = [];
	for (let at = 1; at < times.length; at++) {
		const [start, end] = [times[at - 1]!, times[at]!];
		const [first, last] = [temperatures[at - 1]!, temperatures[at]!];
		const [from, to] = inside(first, last, low, high);
		if (from >= to) continue;
		const timeAt = (share: number) => (share === 1 ? end : start + share * (end - start));
		const temperatureAt = (share: number) => first + share * (last - first);
		spans.push({
			from: timeAt(from),
			to: timeAt(to),
			first: temperatureAt(from),
			last: temperatureAt(to)
		});
	}
	return spans;
}

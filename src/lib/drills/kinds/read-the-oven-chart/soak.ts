import { kelvin, seconds, timeAbove } from '$lib/engine';
import type { Load } from './load';
import type { Traces } from './recorder';

/** The run of a load as its chart shows it. */
export type Run = Traces & {
	readonly every: number;
	readonly doorOpen: readonly { readonly from: number; readonly to: number }[];
};

/** From the first time both places are in the window to the last; `rise` and `fall` say how steeply, in kelvins a second. */
export type Stretch = {
	readonly starts: number;
	readonly ends: number;
	readonly rise: number;
	/** Infinite where the opened door ends it. */
	readonly fall: number;
};

/** What is to be read of a chart, from its samples alone. Seconds from closing the door, and kelvins. */
export type Soak = {
	/** Null where the two places are never in the window together. */
	readonly stretch: Stretch | null;
	/** Time both places were warm enough, in all. */
	readonly inside: number;
	/** No pause between start and end. */
	readonly unbroken: boolean;
	/** Both stayed below the top from the start on. */
	readonly neverOver: boolean;
	/** The warmest any place got, and the warmest the cooler of the two got. */
	readonly hottest: number;
	readonly slowestReached: number;
};

const above = (times: readonly number[], temperatures: readonly number[], threshold: number) =>
	timeAbove.at({
		times: times.map(seconds),
		temperatures: temperatures.map(kelvin),
		threshold: kelvin(threshold)
	});

function stretchOf(times: readonly number[], cooler: readonly number[], low: number): Stretch {
	const first = cooler.findIndex((one) => one >= low);
	const last = cooler.findLastIndex((one) => one >= low);
	const slope = (from: number) => (cooler[from + 1]! - cooler[from]!) / (times[from + 1]! - times[from]!);
	// the rest of the way from the sample before, and to the one after
	const rest = (from: number) => above(times.slice(from, from + 2), cooler.slice(from, from + 2), low).total;
	const left = last < cooler.length - 1;
	return {
		starts: first > 0 ? times[first]! - rest(first - 1) : 0,
		ends: times[last]! + (left ? rest(last) : 0),
		rise: first > 0 ? slope(first - 1) : Infinity,
		fall: left ? -slope(last) : Infinity
	};
}

/** Reads a run: the soak counts while the cooler place is warm enough, until the load is taken out. */
export function soakOf({ every, heaviest, thinnest, doorOpen }: Run, { cure }: Pick<Load, 'cure'>): Soak {
	const [low, high] = [cure.low.value, cure.high.value];
	const unloaded = Math.round(doorOpen.at(-1)!.from / every);
	const cooler = heaviest.map((one, at) => Math.min(one, thinnest[at]!)).slice(0, unloaded + 1);
	const hotter = heaviest.map((one, at) => Math.max(one, thinnest[at]!));
	const times = cooler.map((_, at) => at * every);
	const { total: inside, longest } = above(times, cooler, low);
	// the line to the first sample inside belongs to the soak
	const before = cooler.findIndex((one) => one >= low) - 1;
	return {
		stretch: inside > 0 ? stretchOf(times, cooler, low) : null,
		inside,
		unbroken: inside === longest,
		neverOver: hotter.slice(Math.max(before, 0)).every((one) => one <= high),
		hottest: Math.max(...hotter),
		slowestReached: Math.max(...cooler)
	};
}

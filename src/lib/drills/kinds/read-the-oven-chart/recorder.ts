import type { Load } from './load';
import type { Pace } from './pace';
import { follower } from './place-temperatures';

/** From a sample on, the air goes to a temperature, and comes closer to it e times in `within` seconds. */
export type Phase = { readonly from: number; readonly to: number; readonly within: number };

export type Traces = {
	readonly air: readonly number[];
	readonly heaviest: readonly number[];
	readonly thinnest: readonly number[];
};

/** What one load does at one pace; how its walls follow the air is worked out once. */
export type Recorder = {
	readonly load: Load;
	readonly pace: Pace;
	/**
	 * @param samples how many
	 * @param colder kelvins by which the air around the heaviest place stays below the display's with the oven hot
	 */
	record(phases: readonly Phase[], samples: number, colder?: number): Traces;
};

/** Loading lets out about half of the heat. */
const LEFT_AFTER_LOADING = 0.5;

/** A recorder writes hundredths of a degree at best. */
const written = (temperature: number) => Number(temperature.toFixed(2));

function airThrough(
	phases: readonly Phase[],
	{ load, pace }: Pick<Recorder, 'load' | 'pace'>,
	samples: number
) {
	let now = load.start + LEFT_AFTER_LOADING * (load.oven - load.start);
	return Array.from({ length: samples }, (_, at) => {
		const before = now;
		const phase = phases.findLast(({ from }) => from <= at);
		if (phase) now = phase.to + (now - phase.to) * Math.exp(-pace.every / phase.within);
		return before;
	});
}

export function recorder(load: Load, pace: Pace): Recorder {
	const heaviest = follower(load.heaviest, 0, pace.every);
	const thinnest = follower(load.thinnest, 1, pace.every);
	return {
		load,
		pace,
		record(phases, samples, colder = 0) {
			const air = airThrough(phases, { load, pace }, samples);
			const reaches = 1 - colder / (load.oven - load.start);
			const around = air.map((one) => load.start + (one - load.start) * reaches);
			return {
				air: air.map(written),
				heaviest: heaviest(load.start, around).map(written),
				thinnest: thinnest(load.start, air).map(written)
			};
		}
	};
}

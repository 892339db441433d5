import { MOST_SAMPLES } from './pace';
import type { Phase, Recorder } from './recorder';
import type { Run } from './soak';

/** What an open door leaves of the difference between oven and shop, and how quickly it lets the rest out, seconds. */
export const OPEN_DOOR = { leaves: 0.15, within: 75 };

/** How long a chart goes on after unloading: a share of the run, and samples at least. */
const AFTERWARDS = { share: 0.08, least: 6 };

export const shopAir = ({ load: { start, oven } }: Recorder): number =>
	start + OPEN_DOOR.leaves * (oven - start);

type More = { readonly colder?: number; readonly opened?: Run['doorOpen'] };

/** A run that ends when the door is opened at a time, seconds; undefined where that is more than a chart holds. */
export function unloaded(
	recorder: Recorder,
	phases: readonly Phase[],
	at: number,
	{ colder = 0, opened = [] }: More = {}
): Run | undefined {
	const { every } = recorder.pace;
	const from = Math.round(at / every);
	const samples = from + Math.max(AFTERWARDS.least, Math.round(from * AFTERWARDS.share)) + 1;
	if (samples > MOST_SAMPLES) return undefined;
	const all = [...phases, { from, to: shopAir(recorder), within: OPEN_DOOR.within }];
	return {
		...recorder.record(all, samples, colder),
		every,
		doorOpen: [...opened, { from: from * every, to: (samples - 1) * every }]
	};
}

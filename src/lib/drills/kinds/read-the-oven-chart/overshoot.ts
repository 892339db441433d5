import { meantHold, type Draws, type Heating } from './heating';
import { MOST_SAMPLES } from './pace';
import type { Phase, Recorder } from './recorder';
import type { Run } from './soak';
import { unloaded } from './unloaded';

/** Kelvins above the top of the window that an oven out of control goes to. */
const TARGETS = [12, 18, 24, 32, 42];
/** How quickly it comes back under control, seconds. */
const BACK_WITHIN = 150;
/** Kelvins by which a place that was not too hot stays below the top. */
const CLEAR_BELOW = 1;
/** Kelvins above the top that are no longer an overshoot but a fire. */
const FARTHEST = 18;

const overFor = (
	top: number,
	target: number,
	until: number,
	{ load }: Recorder,
	{ recovery }: Draws
): Phase[] => [
	{ from: 0, to: top + target, within: recovery },
	{ from: until, to: load.oven, within: BACK_WITHIN }
];

type Tried = {
	readonly phases: readonly Phase[];
	readonly peak: number;
	readonly soakFrom: number;
	readonly clean: boolean;
};

/** Samples within which a load that heats faster than it should is in the window, and has calmed down. */
const within = (bothIn: number) => Math.min(MOST_SAMPLES, bothIn + 30);

/** Every way for the air to go over the top while the load heats, mildest first. */
function* tries(recorder: Recorder, draws: Draws, { bothIn }: Heating): Generator<Tried> {
	const { cure, sheetTop } = recorder.load;
	for (const target of TARGETS)
		for (let until = 2; until <= bothIn; until += 1) {
			const phases = overFor(sheetTop.value, target, until, recorder, draws);
			const { heaviest, thinnest, air } = recorder.record(phases, within(bothIn));
			if (Math.max(...air) < sheetTop.value + draws.astray) continue;
			if (Math.max(...heaviest) > cure.high.value - CLEAR_BELOW) continue;
			const warm = heaviest.findIndex((one) => one >= cure.low.value);
			const soakFrom = heaviest.findIndex(
				(one, at) =>
					one >= cure.low.value && thinnest[at]! >= cure.low.value && thinnest[at]! <= cure.high.value
			);
			if (soakFrom < 0) continue;
			yield { phases, peak: Math.max(...thinnest), soakFrom, clean: soakFrom === warm };
		}
}

const run = (recorder: Recorder, draws: Draws, { phases, soakFrom }: Tried) =>
	unloaded(recorder, phases, soakFrom * recorder.pace.every + meantHold(recorder, draws));

/** The display passes the top of the window for a while, and no part does. */
export function airOver(recorder: Recorder, draws: Draws, heating: Heating): Run | undefined {
	const top = recorder.load.cure.high.value - CLEAR_BELOW;
	for (const tried of tries(recorder, draws, heating))
		if (tried.peak <= top) return run(recorder, draws, tried);
	return undefined;
}

/** The thinnest place follows the air over the top and comes back, before the soak starts where that can be. */
export function partOver(recorder: Recorder, draws: Draws, heating: Heating): Run | undefined {
	const top = recorder.load.sheetTop.value;
	let late: Tried | undefined;
	for (const tried of tries(recorder, draws, heating)) {
		if (tried.peak < top + draws.astray || tried.peak > top + FARTHEST) continue;
		if (tried.clean) return run(recorder, draws, tried);
		late ??= tried;
	}
	return late && run(recorder, draws, late);
}

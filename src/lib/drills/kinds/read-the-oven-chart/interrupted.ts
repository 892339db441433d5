import { meantHold, type Draws, type Heating } from './heating';
import type { Recorder } from './recorder';
import type { Run } from './soak';
import { OPEN_DOOR, shopAir, unloaded } from './unloaded';

/** Samples for which a dip lasts at least: longer than a table leaves out between two rows. */
const LEAST_DIP = 5;
/** Longest that somebody leaves the door open, seconds. */
const LONGEST_OPEN = 1200;

/** How fast a shut oven without heat cools, seconds, and what is left of the difference to the shop in the end. */
const SHUT_OVEN = { leaves: 0.3, within: 900 };

/**
 * Somebody opens the door in the middle of the soak, for as short as lets the heaviest place clearly out of the window;
 * the clock runs on.
 */
export function doorBetween(recorder: Recorder, draws: Draws, heating: Heating): Run | undefined {
	const { load, pace } = recorder;
	const low = load.cure.low.value;
	const from = heating.bothIn + Math.round((draws.when * load.hold.low.value) / pace.every);
	const end = heating.bothIn * pace.every + meantHold(recorder, draws);
	for (let to = from + 2; (to - from) * pace.every <= LONGEST_OPEN; to += 1) {
		const phases = [
			...heating.phases,
			{ from, to: shopAir(recorder), within: OPEN_DOOR.within },
			{ from: to, to: load.oven, within: draws.recovery }
		];
		const opened = [{ from: from * pace.every, to: to * pace.every }];
		const run = unloaded(recorder, phases, end, { opened });
		const { heaviest } = run ?? { heaviest: [] };
		const soaking = heaviest.slice(from, Math.round(end / pace.every));
		const out = soaking.filter((one) => one < low);
		const backIn = (soaking.at(-1) ?? 0) >= low;
		if (out.length >= LEAST_DIP && low - Math.min(...out) >= draws.astray) return backIn ? run : undefined;
	}
	return undefined;
}

/** The burner goes out behind a shut door; whoever watches the clock unloads at the time that was meant. */
export function heatLost(recorder: Recorder, draws: Draws, { phases, bothIn }: Heating): Run | undefined {
	const { load, pace } = recorder;
	const from = bothIn + Math.round((draws.when * load.hold.low.value) / pace.every);
	const to = load.start + SHUT_OVEN.leaves * (load.oven - load.start);
	const cooling = [...phases, { from, to, within: SHUT_OVEN.within }];
	return unloaded(recorder, cooling, bothIn * pace.every + meantHold(recorder, draws));
}

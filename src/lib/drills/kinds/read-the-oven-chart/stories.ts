import type { ChartVerdict } from '$lib/engine';
import { doorBetween, heatLost } from './interrupted';
import { meantHold, type Draws, type Heating } from './heating';
import { airOver, partOver } from './overshoot';
import type { Recorder } from './recorder';
import type { Run } from './soak';
import { unloaded } from './unloaded';

/** Something that happens to a load, and what is right to do with it. */
export type Story = {
	readonly id: string;
	readonly verdict: ChartVerdict;
	/** The rule that settles it. */
	readonly rule: 'hold-time' | 'clock-starts-on-part' | 'cure-part-temperature';
	/** Undefined where it cannot happen to this load. */
	run(recorder: Recorder, draws: Draws, heating: Heating): Run | undefined;
};

/** Least share of the longest hold by which an overrun exceeds it. */
const OVERRUN = 0.2;

export const STORIES: readonly Story[] = [
	{
		id: 'sound',
		verdict: 'accept',
		rule: 'hold-time',
		run: (recorder, draws, { phases, bothIn }) =>
			unloaded(recorder, phases, bothIn * recorder.pace.every + meantHold(recorder, draws))
	},
	{ id: 'air-over', verdict: 'accept', rule: 'hold-time', run: airOver },
	{
		id: 'clock-from-door',
		verdict: 'short-cold',
		rule: 'clock-starts-on-part',
		run: (recorder, draws, { phases }) => unloaded(recorder, phases, meantHold(recorder, draws))
	},
	{
		id: 'clock-from-display',
		verdict: 'short-cold',
		rule: 'clock-starts-on-part',
		run: (recorder, draws, { phases, airIn }) =>
			unloaded(recorder, phases, airIn * recorder.pace.every + meantHold(recorder, draws))
	},
	{
		id: 'cold-spot',
		verdict: 'short-cold',
		rule: 'cure-part-temperature',
		run(recorder, draws, { phases, thinnestIn }) {
			const { load, pace } = recorder;
			const colder = load.oven - load.cure.low.value + draws.astray;
			return unloaded(recorder, phases, thinnestIn * pace.every + meantHold(recorder, draws), { colder });
		}
	},
	{ id: 'door-between', verdict: 'short-cold', rule: 'hold-time', run: doorBetween },
	{ id: 'heat-lost', verdict: 'short-cold', rule: 'hold-time', run: heatLost },
	{ id: 'part-over', verdict: 'long-hot', rule: 'cure-part-temperature', run: partOver },
	{
		id: 'held-too-long',
		verdict: 'long-hot',
		rule: 'hold-time',
		run(recorder, { when }, { phases, bothIn }) {
			const longest = recorder.load.hold.high.value;
			return unloaded(recorder, phases, bothIn * recorder.pace.every + longest * (1 + OVERRUN + when / 2));
		}
	}
];

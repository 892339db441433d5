import type { Random } from '../../random';
import type { Phase, Recorder } from './recorder';

/** What chance decides about a load, whatever happens to it. */
export type Draws = {
	/** How the time held lies in the sheet's window, and how far into it something happens; shares. */
	readonly held: number;
	readonly when: number;
	/** How quickly the air comes back after loading, seconds. */
	readonly recovery: number;
	/** Kelvins by which something is clearly too hot or too cold. */
	readonly astray: number;
};

export const drawsOf = (random: Random): Draws => ({
	held: random.between(0.35, 0.65, 0.05),
	when: random.between(0.3, 0.6, 0.05),
	recovery: random.between(60, 150, 15),
	astray: random.between(4, 9, 1)
});

/** The oven as it is meant to run, and the samples at which air, thinnest place and both places are in the window. */
export type Heating = {
	readonly phases: readonly Phase[];
	readonly airIn: number;
	readonly thinnestIn: number;
	readonly bothIn: number;
};

/** Undefined where a chart is too short for this load. */
export function heating({ load, record }: Recorder, draws: Draws, most: number): Heating | undefined {
	const phases = [{ from: 0, to: load.oven, within: draws.recovery }];
	const { air, heaviest, thinnest } = record(phases, most);
	const into = (temperatures: readonly number[]) =>
		temperatures.findIndex((one) => one >= load.cure.low.value);
	const thinnestIn = into(thinnest);
	const bothIn = Math.max(into(heaviest), thinnestIn);
	return into(heaviest) < 0 || thinnestIn < 0 ? undefined : { phases, airIn: into(air), thinnestIn, bothIn };
}

/** Seconds the load is meant to be held. */
export const meantHold = ({ load: { hold } }: Recorder, { held }: Draws): number =>
	hold.low.value + held * (hold.high.value - hold.low.value);

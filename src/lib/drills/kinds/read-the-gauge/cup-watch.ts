import { plannedField } from '$lib/engine';
import type { Instrument } from '../../figures/gauge-panel';
import type { MakeInstrument } from './instrument';
import { limitsOf } from '../limits-of';
import { inSi, type Readable } from './readable';
import { reads, stands } from './reading';
import { draw, suits } from './stands';

const MINUTE = 60;
/** Seconds that a stopwatch is drawn with; the small hand counts further. */
const SHORTEST = 5;
const LONGEST = 150;

const watch = (step: number, tolerance: number, withMinutes: boolean): Readable<'duration'> => ({
	dimension: 'duration',
	unit: 's',
	from: SHORTEST,
	to: LONGEST,
	step,
	tolerance,
	// the minute beside the seconds is overlooked
	...(withMinutes ? { mistaken: (shown: number) => shown % MINUTE } : {})
});

type Watch = { readonly readable: Readable<'duration'>; draw(value: number): Instrument };

const digital = (unit: 's' | 'min:s', decimals: number) => (value: number) =>
	({ kind: 'digital', shows: 'cup-time', dimension: 'duration', unit, decimals, value }) as const;

/** A sweep hand over whole seconds, a display of tenths, and one of minutes and seconds. */
const WATCHES: readonly Watch[] = [
	{
		readable: watch(0.25, 0.5, true),
		draw: (value) => ({ kind: 'stopwatch', shows: 'cup-time', value })
	},
	{ readable: watch(0.1, 0.1, false), draw: digital('s', 1) },
	{ readable: watch(1, 1, true), draw: digital('min:s', 0) }
];

export const cupWatch: MakeInstrument = ({ plan }, random) => {
	const limits = limitsOf(plannedField(plan, 'cup-time')?.demands ?? []);
	const fit = WATCHES.filter(({ readable }) => suits(readable, limits));
	if (!fit.length) return undefined;
	const one = random.pick(fit);
	const drawn = draw(one.readable, limits, random);
	return {
		instruments: [one.draw(inSi(one.readable, drawn.shown))],
		fields: [
			reads('cup-watch-reads', one.readable, limits, drawn),
			stands('cup-watch-stands', one.readable, limits, drawn, true)
		]
	};
};

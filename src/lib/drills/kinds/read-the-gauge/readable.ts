import { si, unitOf, type Dimension, type Si } from '$lib/engine';
import type { Scale } from '../../figures/gauge-panel';

/** What an instrument can be made to show: numbers in its own unit, a step apart. */
export type Readable<D extends Dimension = Dimension> = {
	readonly dimension: D;
	readonly unit: string;
	readonly from: number;
	readonly to: number;
	readonly step: number;
	/** How far off a reading of it is still right, in its unit. */
	readonly tolerance: number;
	/** SI of what somebody takes a number on it for who mixes up its unit; where that can happen. */
	readonly mistaken?: (shown: number) => number;
};

/** A unit taken for the other one, the decimal point put where the other one would have it. */
const TAKEN_FOR = {
	psi: ['bar', 0.1],
	bar: ['psi', 10],
	mil: ['µm', 10],
	µm: ['mil', 0.1]
} as const;

export const mistakenUnit =
	(dimension: Dimension, unit: keyof typeof TAKEN_FOR) =>
	(shown: number): number => {
		const [other, factor] = TAKEN_FOR[unit];
		return unitOf(dimension, other).toSi(shown * factor);
	};

/** A pointer stands on quarters of a division, clear of both ends of the scale. */
export const onDial = (
	dimension: 'pressure',
	scale: Scale & { unit: 'psi' | 'bar' }
): Readable<'pressure'> => ({
	dimension,
	unit: scale.unit,
	from: scale.from + scale.division * 2,
	to: scale.to - scale.division,
	step: scale.division / 4,
	tolerance: scale.division / 2,
	mistaken: mistakenUnit(dimension, scale.unit)
});

/** Binary dust is swept off, so that a pointer on a number is on it. */
const tidy = (number: number) => Number(number.toFixed(6));

export const shownBy = ({ from, to, step }: Readable): number[] =>
	Array.from({ length: Math.floor(tidy((to - from) / step)) + 1 }, (_, at) => tidy(from + at * step));

export const inSi = <D extends Dimension>({ dimension, unit }: Readable<D>, shown: number) =>
	si(unitOf(dimension, unit).toSi(shown)) as Si<D>;

/** A distance on the instrument, in SI. */
export const distance = (readable: Readable, shown: number) => inSi(readable, shown) - inSi(readable, 0);

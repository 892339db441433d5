import type { Text } from '../text';
import type { Dimension, Si } from './dimension';

/** A unit as gauges, cans and sheets show it. */
export type Unit = {
	/** As printed; unique within its dimension and stored in sheets and answers. */
	readonly id: string;
	readonly dimension: Dimension;
	/** As shown to a reader of each language. */
	readonly label: Text;
	toSi(value: number): Si;
	fromSi(value: number): number;
	/** Decimals a gauge, cup or scale in this unit can show. */
	readonly decimals: number;
	/** Decimals for numbers below one, where small things are measured finer. */
	readonly decimalsBelowOne: number;
	/** Other ways people write it; case, accents, spaces, dots and carets do not matter. */
	readonly spellings: readonly string[];
};

type Look = {
	readonly es?: string;
	readonly decimals: number;
	readonly belowOne?: number;
	readonly also?: string;
};

/**
 * Makes the units of one dimension. `toSi` is the only definition of a unit: every scale here is straight (a factor and,
 * for temperature points, a zero), so the way back follows from its values at 0 and 1. `also` separates spellings by commas.
 */
export const unitsOf =
	(dimension: Dimension) =>
	(id: string, toSi: (value: number) => number, look: Look): Unit => {
		const zero = toSi(0);
		const step = toSi(1) - zero;
		return {
			id,
			dimension,
			label: { en: id, es: look.es ?? id },
			toSi: (value) => toSi(value) as Si,
			fromSi: (value) => (value - zero) / step,
			decimals: look.decimals,
			decimalsBelowOne: look.belowOne ?? look.decimals,
			spellings: look.also?.split(', ') ?? []
		};
	};

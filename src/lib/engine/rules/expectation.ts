import type { Traced } from '../plan/trace';

/**
 * What a rule expects of one field, as data. Numbers carry their derivation. `amber` is how far beyond the window
 * (same SI unit, 0 or more) an answer still earns part of the credit in practice; in proving amber is wrong.
 */
export type Expectation =
	| { readonly kind: 'range'; readonly min: Traced; readonly max: Traced; readonly amber: number }
	| { readonly kind: 'at-least'; readonly min: Traced; readonly amber: number }
	| { readonly kind: 'at-most'; readonly max: Traced; readonly amber: number }
	/** Strictly below: the limit itself is a breach. */
	| { readonly kind: 'below'; readonly max: Traced; readonly amber: number }
	/**
	 * A computed number and how far off (fraction of it) is still right. `reading`: it is read off an instrument, so an
	 * answer that is off is wrong, not set too low or too high: nothing becomes of the part before somebody acts on it.
	 */
	| {
			readonly kind: 'computed';
			readonly value: Traced;
			readonly tolerance: Traced<'fraction'>;
			readonly amber: number;
			readonly reading?: true;
	  }
	/**
	 * `because`: numbers that decide which options are right, where they are worked out. `leads`: which way the job goes
	 * wrong when somebody acts on a wrong option, for the options of which that can be said.
	 */
	| {
			readonly kind: 'one-of';
			readonly options: readonly string[];
			readonly because?: readonly Traced[];
			readonly leads?: Readonly<Record<string, 'low' | 'high'>>;
	  }
	/** Every option, and none of those in `not`: ticking everything must not pass. */
	| { readonly kind: 'all-of'; readonly options: readonly string[]; readonly not?: readonly string[] }
	| { readonly kind: 'none-of'; readonly options: readonly string[] }
	/** Each pair: the first comes before the second. `leads`: which way the job goes wrong where that can be said. */
	| {
			readonly kind: 'order';
			readonly before: readonly (readonly [string, string])[];
			readonly leads?: 'low' | 'high';
	  };

/** Green limits of a numeric expectation in SI; undefined for the others. `open` limits are themselves outside. */
export function limits(
	expectation: Expectation
): { min: number; max: number; open: boolean; amber: number } | undefined {
	switch (expectation.kind) {
		case 'range':
			return {
				min: expectation.min.value,
				max: expectation.max.value,
				open: false,
				amber: expectation.amber
			};
		case 'at-least':
			return { min: expectation.min.value, max: Infinity, open: false, amber: expectation.amber };
		case 'at-most':
			return { min: -Infinity, max: expectation.max.value, open: false, amber: expectation.amber };
		case 'below':
			return { min: -Infinity, max: expectation.max.value, open: true, amber: expectation.amber };
		case 'computed': {
			const slack = Math.abs(expectation.value.value * expectation.tolerance.value);
			const { value } = expectation.value;
			return { min: value - slack, max: value + slack, open: false, amber: expectation.amber };
		}
		default:
			return undefined;
	}
}

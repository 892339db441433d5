import type { Text } from '../text';
import type { Dimension } from './dimension';
import type { QuantityProblem } from './problem';
import type { Unit } from './unit';

type WithoutContext<P> = P extends unknown ? Omit<P, 'typed' | 'dimension'> : never;

/** A problem before it is told what was typed and what was asked for. */
export type Refusal = WithoutContext<QuantityProblem>;
/** A number in SI and the unit it was typed in, or why not. */
export type Reading = { readonly value: number; readonly unit: Unit } | Refusal;

export type ReadingContext = {
	readonly dimension: Dimension;
	readonly lang: keyof Text;
	/** Unit printed beside the field, if the field prints one: taken where none is typed. */
	readonly fallbackUnit: Unit | undefined;
};

import type { Provenance } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension } from '../units/dimension';
import { refuseOutside, type Given, type Range } from './valid-range';

type Values = { readonly [name: string]: Given };

/**
 * A computation that gives more than one number: a verdict with its limits, a table row, a fit. Numbers in SI, lists of
 * numbers where an input is a list.
 */
export type Procedure<V extends Values, R> = {
	readonly id: string;
	readonly title: Text;
	/** The calculation as a person would write it. */
	readonly equation: string;
	readonly source: Provenance;
	readonly inputs: { readonly [K in keyof V]: Dimension };
	/** Closed interval in SI per input, for each number of a list too. */
	readonly validFor: { readonly [K in keyof V]: Range };
	/** Throws a RangeError naming input, value and permitted range, and for a list without values. */
	at(values: V): R;
};

type Definition<V extends Values, R> = Omit<Procedure<V, R>, 'at'> & { compute(values: V): R };

/** Makes a procedure that checks its ranges first. */
export function defineProcedure<V extends Values, R>({
	compute,
	...note
}: Definition<V, R>): Procedure<V, R> {
	return {
		...note,
		at(values) {
			refuseOutside(note.id, values as never, note.validFor as never);
			return compute(values);
		}
	};
}

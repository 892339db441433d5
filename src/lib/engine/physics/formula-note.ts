import type { Provenance } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension } from '../units/dimension';

/** What a formula or a procedure says of itself, without its inputs' types. */
export type FormulaNote = {
	readonly id: string;
	readonly title: Text;
	readonly equation: string;
	readonly source: Provenance;
	readonly inputs: Readonly<Record<string, Dimension>>;
	/** Left out where a computation gives more than one number. */
	readonly gives?: Dimension;
	readonly validFor: Readonly<Record<string, readonly [number, number]>>;
};

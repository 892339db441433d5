import type { Provenance } from '../sources/provenance';
import { commonPractice } from '../sources/provenance';
import type { Text } from '../text';
import type { Dimension } from '../units/dimension';

/** A number the shop decides itself. `min`/`max` for a window, `value` for a single number; SI. */
export type ShopValue = {
	readonly label: Text;
	readonly dimension: Dimension;
	readonly provenance: Provenance;
} & (
	| { readonly shape: 'value'; readonly value: number }
	| { readonly shape: 'window'; readonly min: number; readonly max: number }
);

export const defaultNumber = <const D extends Dimension>(
	dimension: D,
	value: number,
	en: string,
	es: string,
	provenance: Provenance = commonPractice
) => ({ shape: 'value' as const, dimension, value: value as number, label: { en, es }, provenance });

export const defaultWindow = <const D extends Dimension>(
	dimension: D,
	min: number,
	max: number,
	en: string,
	es: string,
	provenance: Provenance = commonPractice
) => ({
	shape: 'window' as const,
	dimension,
	min: min as number,
	max: max as number,
	label: { en, es },
	provenance
});

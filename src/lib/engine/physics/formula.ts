import type { Provenance } from '../sources/provenance';
import type { Traced } from '../plan/trace';
import type { Text } from '../text';
import { SI_UNITS, type Dimension, type Si } from '../units/dimension';
import { refuseOutside, type Range } from './valid-range';

type Inputs = Readonly<Record<string, Dimension>>;
type Values<I extends Inputs> = { readonly [K in keyof I]: Si<I[K]> };
type TracedInputs<I extends Inputs> = { readonly [K in keyof I]: Traced<I[K]> };

export type Formula<I extends Inputs, D extends Dimension> = {
	readonly id: string;
	readonly title: Text;
	/** The equation as a person would write it. */
	readonly equation: string;
	readonly source: Provenance;
	readonly inputs: I;
	readonly gives: D;
	/** Closed interval in SI per input; outside it, and for NaN, the formula refuses. */
	readonly validFor: { readonly [K in keyof I]: Range };
	/** The bare number. Throws a RangeError naming input, value and permitted range. */
	at(values: Values<I>): Si<D>;
	/** The number with its derivation. Throws a TypeError too for a number of another dimension. */
	of(inputs: TracedInputs<I>): Traced<D>;
};

type Definition<I extends Inputs, D extends Dimension> = Omit<Formula<I, D>, 'at' | 'of'> & {
	compute(values: Values<I>): number;
};

/** Makes a formula that checks its range and remembers what it was given. */
export function defineFormula<const I extends Inputs, const D extends Dimension>(
	definition: Definition<I, D>
): Formula<I, D> {
	const { compute, ...formula } = definition;
	const names = Object.keys(formula.inputs) as (keyof I & string)[];
	const at = (values: Values<I>) => {
		refuseOutside(formula.id, values as never, formula.validFor as never);
		const result = compute(values);
		if (!Number.isFinite(result)) throw new RangeError(`${formula.id}: the result is not a number`);
		return result as Si<D>;
	};
	const bare = (inputs: TracedInputs<I>) => {
		const values: Record<string, number> = {};
		for (const name of names) {
			const { value, dimension } = inputs[name];
			const wanted = formula.inputs[name]!;
			if (dimension !== wanted)
				throw new TypeError(`${formula.id}: ${name} is ${wanted} in ${SI_UNITS[wanted]}, not ${dimension}`);
			values[name] = value;
		}
		return values as Values<I>;
	};
	return {
		...formula,
		at,
		of: (inputs) => ({
			value: at(bare(inputs)),
			dimension: formula.gives,
			label: formula.title,
			origin: { kind: 'formula', id: formula.id },
			provenance: formula.source,
			inputs: inputs as Readonly<Record<string, Traced>>
		})
	};
}

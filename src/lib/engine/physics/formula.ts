import type { Provenance } from '../sources/provenance';
import type { Traced } from '../plan/trace';
import type { Text } from '../text';
import type { Dimension, Si } from '../units/dimension';

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
	readonly validFor: { readonly [K in keyof I]: readonly [number, number] };
	/** The bare number. Throws a RangeError naming input, value and permitted range. */
	at(values: Values<I>): Si<D>;
	/** The number with its derivation. */
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
	const at = (values: Values<I>) => {
		for (const name of Object.keys(formula.inputs) as (keyof I & string)[]) {
			const value: number = values[name];
			const [low, high] = formula.validFor[name];
			if (!(value >= low && value <= high))
				throw new RangeError(`${formula.id}: ${name} = ${value} is outside ${low} to ${high} (SI)`);
		}
		const result = compute(values);
		if (!Number.isFinite(result)) throw new RangeError(`${formula.id}: the result is not a number`);
		return result as Si<D>;
	};
	return {
		...formula,
		at,
		of: (inputs) => ({
			value: at(
				Object.fromEntries(Object.entries(inputs).map(([name, traced]) => [name, traced.value])) as Values<I>
			),
			dimension: formula.gives,
			label: formula.title,
			origin: { kind: 'formula', id: formula.id },
			provenance: formula.source,
			inputs: inputs as Readonly<Record<string, Traced>>
		})
	};
}

import type { Procedure } from '../physics/procedure';
import type { Given } from '../physics/valid-range';
import type { Text } from '../text';
import type { Dimension, Si } from '../units/dimension';
import type { Traced } from './trace';

type Values = { readonly [name: string]: Given };

/** A list of numbers is handed in as a list of traced ones. */
type TracedGiven<G> = G extends readonly (infer One)[]
	? readonly TracedGiven<One>[]
	: G extends Si<infer D>
		? Traced<D>
		: Traced;

type Tree = Traced | readonly Tree[];
const isList = (tree: Tree): tree is readonly Tree[] => Array.isArray(tree);

const bare = (tree: Tree): Given => (isList(tree) ? tree.map(bare) : tree.value);

/** `readings.0.2`: the third number of the first list. */
const named = (name: string, tree: Tree): [string, Traced][] =>
	isList(tree) ? tree.flatMap((one, at) => named(`${name}.${at}`, one)) : [[name, tree]];

/**
 * One number out of those a procedure gives, with its derivation.
 * @param read picks it from the result, in SI of `gives`
 * @throws RangeError outside the procedure's range
 */
export function oneNumber<V extends Values, R, D extends Dimension>(
	procedure: Procedure<V, R>,
	inputs: { readonly [K in keyof V]: TracedGiven<V[K]> },
	gives: D,
	label: Text,
	read: (result: R) => number
): Traced<D> {
	const trees = Object.entries(inputs as Readonly<Record<string, Tree>>);
	const values = Object.fromEntries(trees.map(([name, tree]) => [name, bare(tree)])) as V;
	return {
		value: read(procedure.at(values)) as Si<D>,
		dimension: gives,
		label,
		origin: { kind: 'formula', id: procedure.id },
		provenance: procedure.source,
		inputs: Object.fromEntries(trees.flatMap(([name, tree]) => named(name, tree)))
	};
}

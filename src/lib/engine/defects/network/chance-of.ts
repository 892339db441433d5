import { assertSound, type Evidence, type Network, type NetworkCause } from './network';

/**
 * A share of the likelihood of what is known that falls apart by cause: `weight` times, for every cause, `so` where it
 * was so and `not` where it was not. A cause without an entry does not matter to it.
 */
type Product = {
	readonly weight: number;
	readonly by: Readonly<Record<string, { readonly so: number; readonly not: number }>>;
};

const each = (ids: readonly string[], factor: { so: number; not: number }): Product['by'] =>
	Object.fromEntries(ids.map((id) => [id, factor]));

/** How likely the defect was there, or was not: 1, less the product of everything that failed to bring it about. */
function ofDefect({ causes, leak }: Network, defect: boolean): readonly Product[] {
	const absent: Product = {
		weight: 1 - leak,
		by: Object.fromEntries(causes.map(({ id, strength }) => [id, { so: 1 - strength, not: 1 }]))
	};
	return defect
		? [
				{ weight: 1, by: {} },
				{ ...absent, weight: -absent.weight }
			]
		: [absent];
}

/** How likely a test came out so. Of one cause it is a factor of that cause; of several, any one less none. */
function ofResult({ tests }: Network, id: string, positive: boolean): readonly Product[] {
	const { of, sensitivity, falseAlarm } = tests.find((test) => test.id === id)!;
	const [so, not] = positive ? [sensitivity, falseAlarm] : [1 - sensitivity, 1 - falseAlarm];
	if (of.length === 1) return [{ weight: 1, by: each(of, { so, not }) }];
	return [
		{ weight: so, by: {} },
		{ weight: not - so, by: each(of, { so: 0, not: 1 }) }
	];
}

const known = (causes: Readonly<Record<string, boolean>>): Product => ({
	weight: 1,
	by: Object.fromEntries(Object.entries(causes).map(([id, so]) => [id, { so: +so, not: +!so }]))
});

/** Sums a product over every state of the causes: independent of each other, they are summed one by one. */
const summed = (causes: readonly NetworkCause[], factors: readonly Product[]): number =>
	causes.reduce(
		(sum, { id, prior }) => {
			const at = factors.map(({ by }) => by[id]).filter((one) => one !== undefined);
			const so = at.reduce((product, one) => product * one.so, prior);
			return sum * at.reduce((product, one) => product * one.not, 1 - prior) + sum * so;
		},
		factors.reduce((product, { weight }) => product * weight, 1)
	);

/**
 * How likely all that is known was beforehand, 0 to 1, exactly. The joint state of the causes is never written out: each
 * piece of evidence is a difference of products over the causes, and products are summed cause by cause (the idea of
 * Heckerman's Quickscore, 1989).
 * @throws RangeError as `assertSound`
 */
export function chanceOf(network: Network, evidence: Evidence): number {
	assertSound(network, evidence);
	const { defect, results = {}, causes = {} } = evidence;
	const pieces: (readonly Product[])[] = Object.entries(results).map(([id, positive]) =>
		ofResult(network, id, positive)
	);
	if (defect !== undefined) pieces.push(ofDefect(network, defect));
	const expanded = pieces.reduce<Product[][]>(
		(so, piece) => so.flatMap((factors) => piece.map((product) => [...factors, product])),
		[[known(causes)]]
	);
	return expanded.reduce((sum, factors) => sum + summed(network.causes, factors), 0);
}

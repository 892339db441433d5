import { AUTHORITIES, limits, type Demand, type Traced } from '$lib/engine';

/** A limit with the demand that sets it. */
export type Limit = {
	readonly demand: Demand;
	readonly at: Traced;
	/** How far around it the rule itself leaves open, SI. */
	readonly slack: number;
};

/** The window a job leaves: the strictest limit of each side that has one. */
export type Limits = { readonly low?: Limit; readonly high?: Limit };

const minOf = ({ expectation }: Demand) => ('min' in expectation ? expectation.min : undefined);
const maxOf = ({ expectation }: Demand) => ('max' in expectation ? expectation.max : undefined);

/** Of limits that coincide, the stronger authority's. */
const stronger = (one: Limit, other: Limit) =>
	AUTHORITIES.indexOf(one.demand.authority) - AUTHORITIES.indexOf(other.demand.authority);

/** The limits that several demands on one field leave. */
export function limitsOf(demands: readonly Demand[]): Limits {
	const of = (end: typeof minOf) =>
		demands.flatMap((demand) => {
			const at = end(demand);
			return at ? [{ demand, at, slack: 0 }] : [];
		});
	const [low] = of(minOf).toSorted((one, other) => other.at.value - one.at.value || stronger(one, other));
	const [high] = of(maxOf).toSorted((one, other) => one.at.value - other.at.value || stronger(one, other));
	return { ...(low && { low }), ...(high && { high }) };
}

/** A limit that has to be worked out, with the rounding that is still right. */
export function workedLimit(demands: readonly Demand[]): Limit | undefined {
	const demand = demands.find(({ expectation }) => expectation.kind === 'computed');
	if (demand?.expectation.kind !== 'computed') return undefined;
	const at = demand.expectation.value;
	return { demand, at, slack: limits(demand.expectation)!.max - at.value };
}

import { limits } from '../rules/expectation';
import type { FieldId } from '../setup/fields';
import { AUTHORITIES, HARD } from '../sources/authority';
import { choose } from './choose';
import type { Conflict, Demand, PlannedField } from './plan';

/** Nobody widens law, safety data, a physical limit of the part, or what stands between a person and harm. */
const isHard = ({ authority, severity }: Demand) => HARD.includes(authority) || severity === 'safety-stop';

/**
 * Keeps every hard demand and, of the rest, all that the strongest authority says; sources of one rank stand side by
 * side, so the stricter governs. A weaker window gives way whole. A weaker demand about options stays as long as it
 * can be met beside the stronger ones, because it says something they leave open.
 */
function rank(id: FieldId, demands: readonly Demand[]) {
	const strongest = AUTHORITIES.find((one) =>
		demands.some((demand) => demand.authority === one && !isHard(demand))
	);
	const kept = new Set(demands.filter((demand) => isHard(demand) || demand.authority === strongest));
	const weaker = demands.filter((demand) => !kept.has(demand) && !limits(demand.expectation));
	for (const authority of AUTHORITIES) {
		const stronger = [...kept];
		for (const demand of weaker)
			if (demand.authority === authority && choose(id, [...stronger, demand])) kept.add(demand);
	}
	return {
		kept: demands.filter((demand) => kept.has(demand)),
		superseded: demands.filter((demand) => !kept.has(demand))
	};
}

/** The fewest of these demands that cannot be met together: one, two, or else all of them. */
function clash(id: FieldId, demands: readonly Demand[]): readonly Demand[] {
	const impossible = demands.find((one) => !choose(id, [one]));
	if (impossible) return [impossible];
	for (const [index, one] of demands.entries())
		for (const other of demands.slice(index + 1)) if (!choose(id, [one, other])) return [one, other];
	return demands;
}

/** One field's demands brought together, or which of them cannot both be met. */
export function settle(id: FieldId, demands: readonly Demand[]): PlannedField | Conflict {
	const { kept, superseded } = demands.length > 1 ? rank(id, demands) : { kept: demands, superseded: [] };
	const answer = choose(id, kept);
	return answer
		? { field: id, demands: kept, superseded, answer }
		: { field: id, rules: clash(id, kept).map(({ rule }) => rule) };
}

import { RULES, STATIONS } from '$lib/engine';

const IN_ORDER: readonly string[] = STATIONS.flatMap((station) =>
	RULES.filter((rule) => rule.station === station).map(({ id }) => id)
);

/** Rules by name in the order of the work; those of another engine version, which are gone, come last. */
export const inWorkingOrder = (rules: Iterable<string>): string[] => {
	const all = new Set(rules);
	const known = IN_ORDER.filter((id) => all.has(id));
	return [...known, ...[...all].filter((id) => !IN_ORDER.includes(id)).sort()];
};

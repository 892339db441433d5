/** Something that can have been the matter, independent of the others. */
export type NetworkCause = {
	readonly id: string;
	/** Chance that it was so before the defect was seen, 0 to 1. */
	readonly prior: number;
	/** Chance that it brings the defect about by itself where it was so, 0 to 1. */
	readonly strength: number;
};

/** A test that is to come out positive where at least one of its causes was so. One of no causes tells nothing. */
export type NetworkTest = {
	readonly id: string;
	readonly of: readonly string[];
	/** Chance of a positive result where one of them was so, 0 to 1. */
	readonly sensitivity: number;
	/** Chance of a positive result where none of them was so, 0 to 1: 1 less the specificity. */
	readonly falseAlarm: number;
};

/**
 * Independent causes, the one defect they explain and tests of the causes. The defect is a noisy-OR (Pearl 1988): it
 * stays away only where every cause that was so fails to bring it about and nothing outside the list does.
 */
export type Network = {
	readonly causes: readonly NetworkCause[];
	/** Chance of the defect without any of the causes, 0 to 1. */
	readonly leak: number;
	readonly tests: readonly NetworkTest[];
};

/** What is known. Anything may be missing; nothing is guessed. */
export type Evidence = {
	/** Whether the defect was there. */
	readonly defect?: boolean;
	/** Results of tests by id: positive or not. */
	readonly results?: Readonly<Record<string, boolean>>;
	/** Causes that are beyond doubt, one way or the other. */
	readonly causes?: Readonly<Record<string, boolean>>;
};

const isChance = (value: number) => value >= 0 && value <= 1;

const twice = (ids: readonly string[]) => ids.find((id, index) => ids.indexOf(id) !== index);

/** @throws RangeError for a chance outside 0 to 1, an id used twice or a name that nothing in the network bears */
export function assertSound({ causes, leak, tests }: Network, evidence: Evidence = {}): void {
	const chances = [
		leak,
		...causes.flatMap(({ prior, strength }) => [prior, strength]),
		...tests.flatMap(({ sensitivity, falseAlarm }) => [sensitivity, falseAlarm])
	];
	const wrong = chances.find((chance) => !isChance(chance));
	if (wrong !== undefined) throw new RangeError(`network: ${wrong} is no chance from 0 to 1`);
	const [causeIds, testIds] = [causes.map(({ id }) => id), tests.map(({ id }) => id)];
	const repeated = twice(causeIds) ?? twice(testIds);
	if (repeated !== undefined) throw new RangeError(`network: '${repeated}' stands in it twice`);
	const named = [...tests.flatMap(({ of }) => of), ...Object.keys(evidence.causes ?? {})];
	const unknown =
		named.find((id) => !causeIds.includes(id)) ??
		Object.keys(evidence.results ?? {}).find((id) => !testIds.includes(id));
	if (unknown !== undefined) throw new RangeError(`network: nothing in it is called '${unknown}'`);
}

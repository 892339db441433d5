import * as v from 'valibot';
import type { jobSchema } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import { quantityText, type Reader } from '$lib/paper';
import type { Fact } from './fact';

type Issue = v.InferIssue<typeof jobSchema>;
type Facts = ReadonlyMap<string, Fact>;

/** What the engine can work with, where an amount is beyond it. */
function boundText({ type, requirement }: Issue, fact: Fact, reader: Reader): string {
	const words = benchCard[reader.lang].problem;
	if (!('dimension' in fact) || typeof requirement !== 'number') return words.outside;
	const bound = quantityText(requirement, fact.dimension, reader);
	if (type === 'min_value') return words.atLeast(bound);
	return type === 'max_value' ? words.atMost(bound) : words.outside;
}

/** The fact an issue is about: the one its path leads to, or the first of a group of which none could be read. */
function at(issue: Issue, facts: Facts): [name: string, fact: Fact] {
	const path = `${v.getDotPath(issue)}.`;
	const found = [...facts].find(([name]) => path.startsWith(`${name}.`) || name.startsWith(path));
	if (!found) throw new Error(`bench card: no field for ${path} (${issue.message})`);
	return found;
}

/** What the engine cannot work with, in words by field. */
export const schemaProblems = (
	issues: readonly Issue[],
	facts: Facts,
	reader: Reader
): Record<string, string> =>
	Object.fromEntries(
		issues.map((issue) => {
			const [name, fact] = at(issue, facts);
			return [name, boundText(issue, fact, reader)];
		})
	);

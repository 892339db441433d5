import * as v from 'valibot';
import type { Scheme } from './scheme';
import { schemeSchema } from './scheme-schema';

export type SchemeProblem = {
	/** `group.field`, or the group alone where its fields disagree with each other; empty for the whole. */
	readonly at: string;
	readonly problem: string;
};

/** A scheme from outside the program, or everything that is wrong with it, each problem at its field. */
export function readScheme(
	input: unknown
):
	| { readonly ok: true; readonly scheme: Scheme }
	| { readonly ok: false; readonly problems: SchemeProblem[] } {
	const result = v.safeParse(schemeSchema, input);
	if (result.success) return { ok: true, scheme: result.output };
	return {
		ok: false,
		problems: result.issues.map((issue) => ({ at: v.getDotPath(issue) ?? '', problem: issue.message }))
	};
}

import { STATIONS } from '$lib/engine';
import * as v from 'valibot';

const line = v.pipe(v.string(), v.trim(), v.nonEmpty());

const frontMatterSchema = v.strictObject({
	title: line,
	/** What the reader can do afterwards, in one sentence. */
	aim: line,
	/** The station it belongs to, or safety. */
	station: v.picklist([...STATIONS, 'safety']),
	/** Raised when the meaning changes, not for wording. */
	version: v.pipe(v.number(), v.integer(), v.minValue(1))
});

export type FrontMatter = v.InferOutput<typeof frontMatterSchema>;

/** Reads what stands at the head of a lesson. Throws with file and field where it is wrong: a bad lesson is no lesson. */
export function readFrontMatter(file: string, metadata: unknown): FrontMatter {
	const result = v.safeParse(frontMatterSchema, metadata);
	if (result.success) return result.output;
	const problems = result.issues.map((issue) => `${v.getDotPath(issue) ?? 'front matter'}: ${issue.message}`);
	throw new TypeError(`${file}: ${problems.join('; ')}`);
}

import type { SourceId } from './sources';

/**
 * Where a value comes from. `arithmetic` is a definition or a calculation, `example` is invented, `answer` was put into a
 * set-up sheet: no sources of fact.
 */
export type Origin =
	| 'published'
	| 'handbook'
	| 'paper'
	| 'common-practice'
	| 'shop'
	| 'data-sheet'
	| 'customer'
	| 'arithmetic'
	| 'example'
	| 'answer';

/** What was read to check the value, or that nobody has: it rests on memory. */
export type Verification = { readonly read: string } | 'memory';

export type Provenance = {
	readonly origin: Origin;
	readonly verification: Verification;
	/** The publication, where there is one. */
	readonly source?: SourceId;
	/** Clause, table or equation in it. */
	readonly where?: string;
};

/** Cites a publication of the list; whether it was read stands in the list and may be narrowed here. */
export const cite = (
	source: SourceId,
	where: string,
	verification: Verification = 'memory',
	origin: Origin = 'published'
): Provenance => ({ origin, verification, source, where });

/** A number of the trade that nobody publishes: every shop confirms or changes it. */
export const commonPractice: Provenance = { origin: 'common-practice', verification: 'memory' };

/** A number made up for a worked sum. */
export const invented: Provenance = { origin: 'example', verification: 'memory' };

export const arithmetic = (where: string): Provenance => ({
	origin: 'arithmetic',
	verification: 'memory',
	where
});

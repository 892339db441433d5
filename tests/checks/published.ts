export type Row = {
	/** Table row, example number or clause. */
	readonly where: string;
	/** From the publication, or from the library named: never from a run of ours. */
	readonly expected: number | string | boolean;
	readonly actual: () => number | string | boolean;
	/** Where this row is printed with other digits than its neighbours. */
	readonly within?: number;
};

export type Published = {
	/** The publication or reference library; the file is named after it. */
	readonly source: string;
	readonly title: string;
	/** What is checked: ids of formulas and procedures, or one of the SUBJECTS that are none. */
	readonly of: readonly string[];
	/** The table these rows are of, where several lists take from one: of one table only so many rows count. */
	readonly table?: string;
	readonly unit: string;
	/** What was read for these very rows, or `memory`. */
	readonly read: string;
	/** How far off a number may be, and why. Text and truth values must match exactly. */
	readonly within: { readonly because: string } & (
		{ readonly relative: number } | { readonly absolute: number }
	);
	readonly rows: readonly Row[];
};

/** What else is checked against something published, beside formulas and procedures. */
export const SUBJECTS = ['units', 'materials', 'proving', 'practice', 'record', 'diagnosis'] as const;

/** Facts of one source, for the runner in checks.test.ts. A check file exports one of these, or a list of them. */
export const published = (
	source: string,
	title: string,
	facts: Omit<Published, 'source' | 'title'>
): Published => ({
	source,
	title,
	...facts
});

/** How far a row is off, as a share of what is allowed: above 1 it fails. */
export function deviation({ within }: Published, row: Row): number {
	const actual = row.actual();
	if (typeof actual !== 'number' || typeof row.expected !== 'number')
		return actual === row.expected ? 0 : Infinity;
	const off = Math.abs(actual - row.expected);
	const allowed =
		row.within ?? ('absolute' in within ? within.absolute : within.relative * Math.abs(row.expected));
	if (Number.isNaN(off)) return Infinity;
	return off === 0 ? 0 : off / allowed;
}

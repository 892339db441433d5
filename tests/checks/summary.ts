import { FORMULAS } from '../../src/lib/engine/physics/formulas';
import { SOURCES } from '../../src/lib/engine/sources/sources';
import { deviation, SUBJECTS, type Published, type Row } from './published';
import { REFERENCE_LIBRARIES } from './reference-libraries';

/** Rows of one table are not independent of each other, and unit conversions are all one idea. */
const OF_ONE_TABLE = 5;
const OF_UNITS = 20;

/** What a training record and a search for causes need is checked too, but is no computation of the trade. */
const NOT_OF_THE_TRADE: readonly string[] = ['proving', 'practice', 'record', 'diagnosis'];

export const titleOf = (source: string): string | undefined =>
	(SOURCES as Readonly<Record<string, { title: string }>>)[source]?.title ?? REFERENCE_LIBRARIES[source];

/** Everything a check may say it is of. */
export const CHECKABLE: readonly string[] = [...FORMULAS.map(({ id }) => id), ...SUBJECTS];

/** Facts that count as independent: at most so many of one table and so many conversions in all. */
export function counted(checks: readonly Published[]) {
	const trade = checks.filter(({ of }) => !of.every((one) => NOT_OF_THE_TRADE.includes(one)));
	const tables = new Map<string, { rows: number; units: boolean }>();
	for (const { source, title, table, of, rows } of trade) {
		const key = `${source}: ${table ?? title}`;
		tables.set(key, { rows: (tables.get(key)?.rows ?? 0) + rows.length, units: of.includes('units') });
	}
	const sum = (units: boolean) =>
		[...tables.values()]
			.filter((table) => table.units === units)
			.reduce((total, { rows }) => total + Math.min(rows, OF_ONE_TABLE), 0);
	return {
		facts: sum(false) + Math.min(sum(true), OF_UNITS),
		sources: new Set(trade.map(({ source }) => source)).size
	};
}

/** As many digits as do not differ between machines. */
const digits = (value: Row['expected']) => (typeof value === 'number' ? Number(value.toPrecision(4)) : value);
const shareOf = (check: Published, row: Row) => Number(deviation(check, row).toFixed(3));

function worstOf(checks: readonly Published[]) {
	const all = checks.flatMap((check) =>
		check.rows.map((row) => ({ check, row, share: shareOf(check, row) }))
	);
	const worst = all.reduce((so, one) => (one.share > so.share ? one : so));
	const { check, row, share } = worst;
	return {
		where: `${check.title}: ${row.where}`,
		expected: digits(row.expected),
		got: digits(row.actual()),
		unit: check.unit,
		share
	};
}

const factsOf = (checks: readonly Published[]) => checks.reduce((sum, { rows }) => sum + rows.length, 0);

/** One line for each formula, checked or not, and each subject. */
function line(of: string, checks: readonly Published[]) {
	const mine = checks.filter((check) => check.of.includes(of));
	const sources = [...new Set(mine.map(({ source }) => source))].sort();
	return {
		of,
		facts: factsOf(mine),
		fromMemory: factsOf(mine.filter(({ read }) => read === 'memory')),
		sources: sources.map((source) => titleOf(source)),
		...(mine.length ? { worst: worstOf(mine) } : {})
	};
}

/** The table of checks that the program shows. */
export const summary = (checks: readonly Published[]) => ({
	...counted(checks),
	computations: CHECKABLE.map((of) => line(of, checks))
});

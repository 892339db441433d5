import catalysed from '../../../../src/lib/engine/coatings/sheets/f-catalysed-clear';

type Loose = Record<string, unknown>;

/** A sound sheet as loose data with some fields of it replaced; `undefined` takes a field out. */
export function changed(over: Loose, lines: Loose = {}): Loose {
	const merge = (base: object, change: Loose) =>
		Object.fromEntries(Object.entries({ ...base, ...change }).filter(([, value]) => value !== undefined));
	return { ...merge(catalysed, over), lines: merge(catalysed.lines, lines) };
}

/** One revision of a line. */
export const revision = (over: Loose) => ({
	from: '2026-01-01',
	unit: 'µm',
	provenance: { origin: 'data-sheet', verification: 'memory' },
	...over
});

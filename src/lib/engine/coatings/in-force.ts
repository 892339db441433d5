import type { Traced } from '../plan/trace';
import type { TracedWindow } from '../shop/shop';
import type { Dimension, Si } from '../units/dimension';
import { unitOf } from '../units/units';
import { SHEET_LINES, type LineId } from './lines';
import type { DataSheet, IsoDate, SheetLine } from './sheet';

type Lines = typeof SHEET_LINES;
type LinesOf<Shape> = { [K in LineId]: Lines[K]['shape'] extends Shape ? K : never }[LineId];
export type ValueLine = LinesOf<'value'>;
export type WindowLine = LinesOf<'window'>;

/** The entry of a line that holds on a day: the newest that has started. */
export function lineOn(sheet: DataSheet, line: LineId, on: IsoDate): SheetLine | undefined {
	return sheet.lines[line]
		?.filter((entry) => entry.from <= on)
		.reduce<SheetLine | undefined>(
			(newest, entry) => (!newest || entry.from >= newest.from ? entry : newest),
			undefined
		);
}

function traced<D extends Dimension>(
	sheet: DataSheet,
	line: LineId,
	entry: SheetLine,
	printed: number
): Traced<D> {
	const { dimension, label } = SHEET_LINES[line];
	return {
		value: unitOf(dimension, entry.unit).toSi(printed) as Si<D>,
		dimension: dimension as D,
		label,
		origin: { kind: 'sheet', sheet: sheet.id, path: line },
		provenance: entry.provenance,
		inputs: {}
	};
}

/** A single number the sheet states on a day; undefined where it is silent. */
export function statedValue<K extends ValueLine>(
	sheet: DataSheet,
	line: K,
	on: IsoDate
): Traced<Lines[K]['dimension']> | undefined {
	const entry = lineOn(sheet, line, on);
	return entry && 'value' in entry ? traced(sheet, line, entry, entry.value) : undefined;
}

/** A window the sheet states on a day; undefined where it is silent. */
export function statedWindow<K extends WindowLine>(
	sheet: DataSheet,
	line: K,
	on: IsoDate
): TracedWindow<Lines[K]['dimension']> | undefined {
	const entry = lineOn(sheet, line, on);
	return entry && 'min' in entry
		? { min: traced(sheet, line, entry, entry.min), max: traced(sheet, line, entry, entry.max) }
		: undefined;
}

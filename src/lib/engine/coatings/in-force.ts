import { remembered } from '../plan/remembered';
import type { Traced } from '../plan/trace';
import type { TracedWindow } from '../shop/shop';
import type { Dimension, Si } from '../units/dimension';
import { unitOf } from '../units/units';
import { SHEET_LINES, type LineId } from './lines';
import type { DataSheet, IsoDate, SheetLine } from './sheet';
import { startDays } from './start-days';

type Lines = typeof SHEET_LINES;
type LinesOf<Shape> = { [K in LineId]: Lines[K]['shape'] extends Shape ? K : never }[LineId];
export type ValueLine = LinesOf<'value'>;
export type WindowLine = LinesOf<'window'>;
export type StatedValue<K extends ValueLine> = Traced<Lines[K]['dimension']>;
export type StatedWindow<K extends WindowLine> = TracedWindow<Lines[K]['dimension']>;

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

type Stated = Traced | TracedWindow | undefined;

function read(sheet: DataSheet, line: LineId, on: IsoDate): Stated {
	const entry = lineOn(sheet, line, on);
	if (!entry) return undefined;
	return 'min' in entry
		? { min: traced(sheet, line, entry, entry.min), max: traced(sheet, line, entry, entry.max) }
		: traced(sheet, line, entry, entry.value);
}

/** A sheet as it reads from each day on which a number of it changes, every line read once. */
const editions = remembered((sheet: DataSheet) =>
	startDays(sheet).map((from) => ({
		from,
		stated: remembered((line: LineId) => read(sheet, line, from), new Map())
	}))
);

const SILENT = () => undefined;

/** The lines of a sheet as they read on a day. */
export const linesOn = (sheet: DataSheet, on: IsoDate): ((line: LineId) => Stated) =>
	editions(sheet).findLast(({ from }) => from <= on)?.stated ?? SILENT;

/** A single number the sheet states on a day; undefined where it is silent. */
export const statedValue = <K extends ValueLine>(sheet: DataSheet, line: K, on: IsoDate) =>
	linesOn(sheet, on)(line) as StatedValue<K> | undefined;

/** A window the sheet states on a day; undefined where it is silent. */
export const statedWindow = <K extends WindowLine>(sheet: DataSheet, line: K, on: IsoDate) =>
	linesOn(sheet, on)(line) as StatedWindow<K> | undefined;

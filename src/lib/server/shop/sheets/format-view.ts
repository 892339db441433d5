import {
	DEMO_SHEETS,
	exportSheet,
	LINE_BOUNDS,
	SHEET_FORMAT,
	SHEET_LINES,
	sheetJsonSchema,
	UNITS
} from '$lib/engine';
import { say } from '$lib/i18n';
import { windowText, type Reader } from '$lib/paper';
import { LINE_IDS } from './line-rooms';

/** The file format of data sheets: every line it knows, and an example. */
export const formatView = (reader: Reader) => ({
	format: SHEET_FORMAT,
	lines: LINE_IDS.map((id) => {
		const { label, dimension, shape } = SHEET_LINES[id];
		const [min, max] = LINE_BOUNDS[id];
		return {
			id,
			label: say(label, reader.lang),
			shape,
			units: UNITS[dimension].map((unit) => `"${unit.id}"`).join(', '),
			between: windowText({ min, max }, dimension, reader)
		};
	}),
	example: exportSheet(DEMO_SHEETS[0]!)
});

/** The format as a JSON Schema document. */
export const formatSchema = (): string => `${JSON.stringify(sheetJsonSchema(), null, '\t')}\n`;

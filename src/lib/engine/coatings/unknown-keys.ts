import { SHEET_LINES, type LineId } from './lines';
import type { SheetProblem } from './problem';
import { KNOWN_KEYS, MOST_REVISIONS } from './sheet-schema';

type Loose = Readonly<Record<string, unknown>>;
const isObject = (input: unknown): input is Loose =>
	typeof input === 'object' && input !== null && !Array.isArray(input);
const keysOf = (input: unknown) => (isObject(input) ? Object.keys(input) : []);
const child = (input: unknown, key: string) =>
	isObject(input) && Object.hasOwn(input, key) ? input[key] : undefined;

const strange = (input: unknown, known: readonly string[], under: string): SheetProblem[] =>
	keysOf(input)
		.filter((key) => !known.includes(key))
		.map((key) => ({
			path: under ? `${under}.${key}` : key,
			text: {
				en: `A data sheet has no field of this name here. It knows ${known.join(', ')}.`,
				es: `Una hoja técnica no tiene un campo con este nombre aquí. Conoce ${known.join(', ')}.`
			}
		}));

const SHAPE_MIXED_UP = {
	value: {
		key: ['min', 'max'],
		text: {
			en: 'This line takes one number (value), not a lowest and a highest one.',
			es: 'Esta línea lleva un solo número (value), no un mínimo y un máximo.'
		}
	},
	window: {
		key: ['value'],
		text: {
			en: 'This line takes a lowest and a highest number (min, max), not a single one.',
			es: 'Esta línea lleva un mínimo y un máximo (min, max), no un solo número.'
		}
	}
} as const;

function revision(line: LineId, input: unknown, path: string): SheetProblem[] {
	const { shape } = SHEET_LINES[line];
	const other = SHAPE_MIXED_UP[shape];
	const provenance = child(input, 'provenance');
	return [
		...strange(input, KNOWN_KEYS.revision[shape], path).map((found) =>
			other.key.some((key) => found.path === `${path}.${key}`) ? { ...found, text: other.text } : found
		),
		...strange(provenance, KNOWN_KEYS.provenance, `${path}.provenance`),
		...strange(child(provenance, 'verification'), KNOWN_KEYS.verification, `${path}.provenance.verification`)
	];
}

/** Fields that nobody reads: refused, because a misspelt one would silently leave out a limit. */
export const unknownKeys = (input: unknown): SheetProblem[] => strange(input, KNOWN_KEYS.sheet, '');

export const unknownLines = (lines: unknown): SheetProblem[] => strange(lines, KNOWN_KEYS.lines, 'lines');

export const unknownRevisionKeys = (line: LineId, revisions: unknown): SheetProblem[] =>
	Array.isArray(revisions)
		? revisions
				.slice(0, MOST_REVISIONS)
				.flatMap((entry, index) => revision(line, entry, `lines.${line}.${index}`))
		: [];

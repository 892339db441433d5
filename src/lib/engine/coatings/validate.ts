import * as v from 'valibot';
import { agreementProblems } from './agreement';
import { lineProblems } from './line-problems';
import { SHEET_LINES, type LineId } from './lines';
import type { CheckedSheet, SheetProblem } from './problem';
import { schemaProblems } from './schema-problem';
import type { DataSheet, SheetLine } from './sheet';
import { headSchema, lineSchema } from './sheet-schema';
import { unknownKeys, unknownLines, unknownRevisionKeys } from './unknown-keys';

/** The first thing wrong with a field is enough: the next would only repeat it. */
const ONE_PER_FIELD = { abortPipeEarly: true } as const;

/** A list longer than a person reads helps nobody. */
const MOST_PROBLEMS = 100;

const isObject = (input: unknown): input is Readonly<Record<string, unknown>> =>
	typeof input === 'object' && input !== null && !Array.isArray(input);

const refused = (problems: readonly SheetProblem[]): CheckedSheet => ({
	ok: false,
	problems: problems.slice(0, MOST_PROBLEMS)
});

function readLines(input: Readonly<Record<string, unknown>>) {
	const lines: Partial<Record<LineId, readonly SheetLine[]>> = {};
	const problems: SheetProblem[] = unknownLines(input);
	for (const line of Object.keys(SHEET_LINES) as LineId[]) {
		if (!Object.hasOwn(input, line)) continue;
		const read = v.safeParse(lineSchema(line), input[line], ONE_PER_FIELD);
		problems.push(...unknownRevisionKeys(line, input[line]));
		if (read.success) {
			lines[line] = read.output as readonly SheetLine[];
			problems.push(...lineProblems(line, lines[line]));
		} else problems.push(...schemaProblems(read.issues, `lines.${line}`));
	}
	return { lines, problems };
}

/**
 * Checks anything that claims to be a data sheet: typed into the form or read from a file. Every problem stands at its
 * field; what the statements say against each other is looked at once each of them is sound. Never throws.
 */
export function validateSheet(input: unknown): CheckedSheet {
	if (!isObject(input))
		return refused([
			{ path: '', text: { en: 'This is not a data sheet.', es: 'Esto no es una hoja técnica.' } }
		]);
	const problems = unknownKeys(input);
	const head = v.safeParse(headSchema, input, ONE_PER_FIELD);
	if (!head.success) problems.push(...schemaProblems(head.issues));
	if (!isObject(input.lines))
		return refused([
			...problems,
			{
				path: 'lines',
				text: { en: 'The numbers of the sheet are missing.', es: 'Faltan los números de la hoja.' }
			}
		]);
	const read = readLines(input.lines);
	problems.push(...read.problems);
	if (problems.length || !head.success) return refused(problems);
	const sheet: DataSheet = { ...head.output, lines: read.lines };
	const disagreements = agreementProblems(sheet);
	return disagreements.length ? refused(disagreements) : { ok: true, sheet };
}

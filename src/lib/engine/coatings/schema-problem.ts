import * as v from 'valibot';
import type { Text } from '../text';
import type { SheetProblem } from './problem';

const TYPES: Readonly<Record<string, Text>> = {
	string: { en: 'Write a text here.', es: 'Escriba un texto aquí.' },
	number: { en: 'Write a number here, without its unit.', es: 'Escriba un número aquí, sin la unidad.' },
	finite: { en: 'Write a number that has an end.', es: 'Escriba un número finito.' },
	boolean: { en: 'Answer yes or no (true or false).', es: 'Responda sí o no (true o false).' },
	array: { en: 'A list is needed here.', es: 'Aquí hace falta una lista.' },
	object: { en: 'A group of fields is needed here.', es: 'Aquí hace falta un grupo de campos.' },
	iso_date: {
		en: 'Write the date as year-month-day: 2026-01-31.',
		es: 'Escriba la fecha como año-mes-día: 2026-01-31.'
	},
	check: { en: 'The calendar has no such day.', es: 'Ese día no existe en el calendario.' },
	min_length: { en: 'This must not be empty.', es: 'Esto no puede quedar vacío.' },
	regex: {
		en: 'Use small letters a to z, digits and single hyphens between them.',
		es: 'Use letras minúsculas de la a a la z, cifras y guiones sueltos entre ellas.'
	},
	union: {
		en: 'Say what was read to check the number, or "memory" where nobody has read it.',
		es: 'Diga qué se leyó para comprobar el número, o «memory» si nadie lo ha leído.'
	}
};

const MISSING: Text = { en: 'This is missing.', es: 'Falta este dato.' };
const NO_UNIT: Text = {
	en: 'This number has no unit: leave the unit empty.',
	es: 'Este número no lleva unidad: deje la unidad vacía.'
};

/** `("µm" | "mm")` as valibot words it, back to the list it was made from. */
const options = (expected: string) =>
	expected
		.replace(/^\(|\)$/g, '')
		.replaceAll('"', '')
		.split(' | ')
		.join(', ');

function textOf(issue: v.BaseIssue<unknown>): Text {
	const { type, expected, requirement } = issue;
	if (issue.path?.at(-1)?.origin === 'key' || issue.input === undefined) return MISSING;
	if (type === 'picklist' || type === 'literal') {
		const allowed = options(expected ?? '');
		return allowed ? { en: `Permitted here: ${allowed}.`, es: `Aquí se permite: ${allowed}.` } : NO_UNIT;
	}
	if (type === 'max_length')
		return typeof issue.input === 'string'
			? { en: `At most ${requirement} characters.`, es: `Como máximo ${requirement} caracteres.` }
			: { en: `At most ${requirement} entries.`, es: `Como máximo ${requirement} elementos.` };
	const text = TYPES[type];
	if (!text) throw new Error(`no words for a problem of type '${type}'`);
	return text;
}

/** What a schema found, in words; `under` is the path the checked value itself stands at. */
export const schemaProblems = (issues: readonly v.BaseIssue<unknown>[], under = ''): SheetProblem[] =>
	issues.map((issue) => ({
		path: [under, v.getDotPath(issue)].filter(Boolean).join('.'),
		text: textOf(issue)
	}));

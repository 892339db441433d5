import type { Text } from '../text';
import { SHEET_FORMAT } from './format-tag';
import type { CheckedSheet } from './problem';
import { validateSheet } from './validate';

/** Characters; many times what a full sheet with a long history needs. */
const LONGEST_FILE = 500_000;

const refused = (path: string, en: string, es: string): CheckedSheet => ({
	ok: false,
	problems: [{ path, text: { en, es } satisfies Text }]
});

function parsed(file: string): unknown {
	try {
		return JSON.parse(file);
	} catch {
		return undefined;
	}
}

/** Reads the text of a file in our format. Whatever is wrong comes back as problems; it never throws. */
export function importSheet(file: string): CheckedSheet {
	if (file.length > LONGEST_FILE)
		return refused(
			'',
			'The file is far too large for a data sheet.',
			'El archivo es demasiado grande para una hoja técnica.'
		);
	const content = parsed(file);
	if (typeof content !== 'object' || content === null || Array.isArray(content))
		return refused(
			'',
			'The file holds no JSON object, or was cut off.',
			'El archivo no contiene un objeto JSON, o está cortado.'
		);
	const { format, ...sheet } = content as Record<string, unknown>;
	if (format !== SHEET_FORMAT)
		return refused(
			'format',
			`Only files of the format “${SHEET_FORMAT}” can be read.`,
			`Solo se pueden leer archivos del formato «${SHEET_FORMAT}».`
		);
	return validateSheet(sheet);
}

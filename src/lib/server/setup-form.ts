import { secretProblem, type SecretProblem } from './secret-kind';
import { typed } from './typed';

const FIELDS = ['code', 'shop', 'zone', 'lead', 'secret', 'again'] as const;
type Field = (typeof FIELDS)[number];

/** What can be wrong with an entry of the form. */
export type SetupProblem = 'empty' | 'too-long' | 'not-alike' | 'wrong-zone' | SecretProblem;

const LONGEST = 200;

const isTimeZone = (name: string): boolean => {
	try {
		return Boolean(new Intl.DateTimeFormat('en', { timeZone: name }));
	} catch {
		return false;
	}
};

const problemOf = (field: Field, entries: Record<Field, string>): SetupProblem | null => {
	const text = entries[field];
	if (!text.trim()) return 'empty';
	if (field === 'secret') return secretProblem('passphrase', text);
	if (field === 'again') return text === entries.secret ? null : 'not-alike';
	if (text.length > LONGEST) return 'too-long';
	return field === 'zone' && !isTimeZone(text) ? 'wrong-zone' : null;
};

/** Reads the form of the first visit. Whether the code is right is not looked at here. */
export const readSetup = (form: FormData) => {
	const entries = Object.fromEntries(FIELDS.map((field) => [field, typed(form, field)])) as Record<
		Field,
		string
	>;
	const problems: Partial<Record<Field, SetupProblem>> = {};
	for (const field of FIELDS) {
		const problem = problemOf(field, entries);
		if (problem) problems[field] = problem;
	}
	return { entries, problems, ok: Object.keys(problems).length === 0 };
};

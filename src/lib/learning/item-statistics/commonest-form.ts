import type { AnsweredSheet } from './answered-sheet';

/**
 * The sheets of the form met most often: those that ask exactly the same things. Of two met equally often the one met
 * first.
 */
export function commonestForm(sheets: readonly AnsweredSheet[]): readonly AnsweredSheet[] {
	const forms = new Map<string, AnsweredSheet[]>();
	for (const sheet of sheets) {
		const form = JSON.stringify([...sheet.keys()].sort());
		forms.set(form, [...(forms.get(form) ?? []), sheet]);
	}
	return [...forms.values()].reduce((most, form) => (form.length > most.length ? form : most), []);
}

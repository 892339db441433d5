import {
	field,
	problemText,
	UNITS,
	type Answer,
	type FieldId,
	type Options,
	type QuantityProblem
} from '$lib/engine';
import { say } from '$lib/i18n';
import { answerText, optionsOf } from './answer-text';
import type { Reader } from './reader';

/** What was put into a field so far: an answer, or something typed that could not be read. */
export type Entry = { readonly answer?: Answer; readonly typed?: string; readonly problem?: QuantityProblem };

/** The catalogue's own order is the working order, so a fresh sheet starts from one that has nothing to do with it. */
const unsorted = (ids: readonly string[]) => {
	const backwards = (id: string) => [...id].reverse().join('');
	return ids.toSorted((a, b) => (backwards(a) < backwards(b) ? -1 : 1));
};

/** Words for a problem with what was typed. */
export const problemWords = (problem: QuantityProblem, reader: Reader) =>
	say(problemText(problem), reader.lang);

/**
 * One field of the set-up sheet as plain data for a page.
 * @param offered options of this one question, where they are not the field's own
 */
export function fieldView(id: FieldId, entry: Entry, reader: Reader, offered?: Options) {
	const { lang } = reader;
	const spec = field(id);
	const asked = {
		id: `field-${id}`,
		name: id,
		label: say(spec.label, lang),
		...(entry.problem ? { error: problemWords(entry.problem, reader) } : {})
	};
	if (spec.kind === 'quantity') {
		const units = UNITS[spec.dimension].map((unit) => say(unit.label, lang)).filter(Boolean);
		const value = entry.typed ?? answerText(id, entry.answer, reader);
		return { ...asked, kind: spec.kind, value, ...(units.length ? { units: units.slice(0, 4) } : {}) };
	}
	const options = Object.entries(optionsOf(id, offered)).map(([option, text]) => ({
		id: option,
		label: say(text, lang)
	}));
	const ids = options.map((option) => option.id);
	const { answer } = entry;
	if (spec.kind === 'choice')
		return { ...asked, kind: spec.kind, options, value: answer?.kind === 'choice' ? answer.option : '' };
	if (spec.kind === 'choices')
		return { ...asked, kind: spec.kind, options, value: answer?.kind === 'choices' ? answer.options : [] };
	return {
		...asked,
		kind: spec.kind,
		options,
		value: answer?.kind === 'order' ? answer.options : unsorted(ids)
	};
}

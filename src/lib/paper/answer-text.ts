import { field, type Answer, type FieldId, type Options } from '$lib/engine';
import { format, say } from '$lib/i18n';
import { quantityText } from './quantity-text';
import type { Reader } from './reader';

/** What a field lets a person choose from: what this one question offers, or the field's own. */
export const optionsOf = (id: FieldId, offered?: Options): Options => {
	const spec = field(id);
	return offered ?? (spec.kind === 'quantity' ? {} : spec.options);
};

/** Options of a field in words, as a list. */
export const optionNames = (
	id: FieldId,
	options: readonly string[],
	{ lang }: Reader,
	offered?: Options
): string[] => {
	const names = optionsOf(id, offered);
	return options.map((option) => (names[option] ? say(names[option], lang) : option));
};

/**
 * An answer in words; empty where nothing was answered. What a person typed stays as typed.
 * @param offered options of this one question, where they are not the field's own
 */
export function answerText(
	id: FieldId,
	answer: Answer | null | undefined,
	reader: Reader,
	offered?: Options
): string {
	if (!answer) return '';
	const spec = field(id);
	switch (answer.kind) {
		case 'quantity':
			if (answer.typed) return answer.typed;
			return spec.kind === 'quantity' ? quantityText(answer.value, spec.dimension, reader) : '';
		case 'choice':
			return optionNames(id, [answer.option], reader, offered).join();
		case 'choices':
			return format.list(optionNames(id, answer.options, reader, offered), reader.lang);
		case 'order':
			return optionNames(id, answer.options, reader, offered).join(' → ');
	}
}

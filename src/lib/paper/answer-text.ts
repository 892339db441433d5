import { field, type Answer, type FieldId } from '$lib/engine';
import { format, say } from '$lib/i18n';
import { quantityText } from './quantity-text';
import type { Reader } from './reader';

const optionName = (id: FieldId, option: string, { lang }: Reader) => {
	const spec = field(id);
	const name = spec.kind === 'quantity' ? undefined : spec.options[option];
	return name ? say(name, lang) : option;
};

/** Options of a field in words, as a list. */
export const optionNames = (id: FieldId, options: readonly string[], reader: Reader) =>
	options.map((option) => optionName(id, option, reader));

/** An answer in words; empty where nothing was answered. What a person typed stays as typed. */
export function answerText(id: FieldId, answer: Answer | null | undefined, reader: Reader): string {
	if (!answer) return '';
	const spec = field(id);
	switch (answer.kind) {
		case 'quantity':
			if (answer.typed) return answer.typed;
			return spec.kind === 'quantity' ? quantityText(answer.value, spec.dimension, reader) : '';
		case 'choice':
			return optionName(id, answer.option, reader);
		case 'choices':
			return format.list(optionNames(id, answer.options, reader), reader.lang);
		case 'order':
			return optionNames(id, answer.options, reader).join(' → ');
	}
}

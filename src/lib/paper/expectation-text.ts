import { field, limits, type Expectation, type FieldId, type Options } from '$lib/engine';
import { expectations, format } from '$lib/i18n';
import { optionNames } from './answer-text';
import { windowText } from './quantity-text';
import type { Reader } from './reader';

/**
 * What a rule expects of a field, in words and in the reader's units.
 * @param offered options of this one question, where they are not the field's own
 */
export function expectationText(
	id: FieldId,
	expectation: Expectation,
	reader: Reader,
	offered?: Options
): string {
	const words = expectations[reader.lang];
	const spec = field(id);
	const names = (options: readonly string[]) => optionNames(id, options, reader, offered);
	switch (expectation.kind) {
		case 'one-of':
			return format.either(names(expectation.options), reader.lang);
		case 'all-of':
			return [
				expectation.options.length ? words.all(names(expectation.options)) : words.nothing,
				...(expectation.not?.length ? [words.none(names(expectation.not))] : [])
			].join('; ');
		case 'none-of':
			return words.none(names(expectation.options));
		case 'order':
			return expectation.before
				.map((pair) => names(pair))
				.map(([first, then]) => words.before(first!, then!))
				.join('; ');
		default: {
			const window = limits(expectation);
			return window && spec.kind === 'quantity' ? windowText(window, spec.dimension, reader) : '';
		}
	}
}

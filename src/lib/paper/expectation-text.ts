import { field, limits, type Expectation, type FieldId } from '$lib/engine';
import { expectations, format } from '$lib/i18n';
import { optionNames } from './answer-text';
import { windowText } from './quantity-text';
import type { Reader } from './reader';

/** What a rule expects of a field, in words and in the reader's units. */
export function expectationText(id: FieldId, expectation: Expectation, reader: Reader): string {
	const words = expectations[reader.lang];
	const spec = field(id);
	switch (expectation.kind) {
		case 'one-of':
			return format.either(optionNames(id, expectation.options, reader), reader.lang);
		case 'all-of':
			return [
				expectation.options.length ? words.all(optionNames(id, expectation.options, reader)) : words.nothing,
				...(expectation.not?.length ? [words.none(optionNames(id, expectation.not, reader))] : [])
			].join('; ');
		case 'none-of':
			return words.none(optionNames(id, expectation.options, reader));
		case 'order':
			return expectation.before
				.map((pair) => optionNames(id, pair, reader))
				.map(([first, then]) => words.before(first!, then!))
				.join('; ');
		default: {
			const window = limits(expectation);
			return window && spec.kind === 'quantity' ? windowText(window, spec.dimension, reader) : '';
		}
	}
}

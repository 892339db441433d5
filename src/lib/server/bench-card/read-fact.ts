import { parseQuantity, type DataSheet } from '$lib/engine';
import { benchCard } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import { problemWords, type Reader } from '$lib/paper';
import { readValues } from '../standing/read-values';
import type { Fact } from './fact';

/** A fact as a job holds it, or what is wrong with what was typed, in words. */
export type ReadFact = { readonly value: unknown } | { readonly problem: string };

/** One line, however it was pasted. */
const plain = (text: string): string => text.replace(/[\s\p{Cc}]+/gu, ' ').trim();

function readQuantity(fact: Extract<Fact, { kind: 'quantity' }>, text: string, reader: Reader): ReadFact {
	const { ifEmpty, dimension } = fact;
	if (!text && ifEmpty !== undefined) return { value: ifEmpty === 'absent' ? undefined : ifEmpty };
	const parsed = parseQuantity(text, dimension, { lang: reader.lang });
	return parsed.ok ? { value: parsed.value } : { problem: problemWords(parsed.problem, reader) };
}

function readQuantities(fact: Extract<Fact, { kind: 'quantities' }>, text: string, reader: Reader): ReadFact {
	const read = readValues(text, fact.dimension, { lang: reader.lang });
	if (!read.ok) return { problem: problemWords(read.problem, reader) };
	const { exactly } = fact;
	if (exactly !== undefined && text && read.values.length !== exactly)
		return { problem: benchCard[reader.lang].problem.readings(exactly) };
	return { value: read.values };
}

function readChoice(fact: Extract<Fact, { kind: 'choice' }>, text: string, reader: Reader): ReadFact {
	if (!Object.hasOwn(fact.options, text)) return { problem: benchCard[reader.lang].problem.choose };
	const { means } = fact;
	return { value: means && Object.hasOwn(means, text) ? means[text] : text };
}

/**
 * Reads what was entered for one fact.
 * @param sheets the data sheets in force, by id
 */
export function readFact(
	fact: Fact,
	entered: readonly string[],
	sheets: Readonly<Record<string, DataSheet>>,
	reader: Reader
): ReadFact {
	const words = benchCard[reader.lang].problem;
	const text = plain(entered[0] ?? '');
	switch (fact.kind) {
		case 'text':
			if (!text) return { problem: words.empty };
			return text.length > fact.longest ? { problem: words.tooLong(fact.longest) } : { value: text };
		case 'date':
			if (!text && fact.ifEmpty === null) return { value: null };
			return isIsoDate(text) ? { value: text } : { problem: words.noDay };
		case 'coating':
			return Object.hasOwn(sheets, text) ? { value: text } : { problem: words.noSheet };
		case 'quantity':
			return readQuantity(fact, text, reader);
		case 'quantities':
			return readQuantities(fact, text, reader);
		case 'choice':
			return readChoice(fact, text, reader);
		case 'choices':
			if (!entered.length && fact.ifNone === 'absent') return { value: undefined };
			return entered.every((one) => Object.hasOwn(fact.options, one))
				? { value: [...new Set(entered)] }
				: { problem: words.notOffered };
	}
}

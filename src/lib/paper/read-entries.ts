import { field, halfStep, parseQuantity, type Answer, type FieldId, type Options } from '$lib/engine';
import { optionsOf } from './answer-text';
import type { Entry } from './field-view';
import type { Reader } from './reader';

/** What single questions let a person choose from. */
export type Offered = Readonly<Partial<Record<FieldId, Options>>>;

const distinct = (values: string[]) => [...new Set(values)];

function readOne(
	id: FieldId,
	form: FormData,
	{ lang }: Reader,
	offered: Options | undefined
): Entry | 'tampered' {
	const spec = field(id);
	const values = form.getAll(id);
	if (!values.every((value) => typeof value === 'string')) return 'tampered';
	if (spec.kind === 'quantity') {
		const typed = (values[0] ?? '').trim();
		if (!typed) return {};
		const parsed = parseQuantity(typed, spec.dimension, { lang });
		return parsed.ok
			? {
					answer: {
						kind: 'quantity',
						value: parsed.value,
						typed: typed.slice(0, 60),
						rounding: halfStep(parsed.value, spec.dimension, parsed.unit)
					}
				}
			: { typed: typed.slice(0, 60), problem: parsed.problem };
	}
	const options = Object.keys(optionsOf(id, offered));
	if (values.length !== distinct(values).length || !values.every((value) => options.includes(value)))
		return 'tampered';
	if (spec.kind === 'choice') {
		if (values.length > 1) return 'tampered';
		return values[0] === undefined ? {} : { answer: { kind: 'choice', option: values[0] } };
	}
	if (spec.kind === 'order' && values.length && values.length !== options.length) return 'tampered';
	const answer: Answer = { kind: spec.kind, options: values };
	return spec.kind === 'order' && !values.length ? {} : { answer };
}

/**
 * Reads the posted fields of a set-up sheet. Empty fields give empty entries; unreadable quantities keep what was typed
 * with the problem; a form that no page of ours can have sent gives undefined.
 * @param offered options of questions where they are not the field's own
 */
export function readEntries(
	ids: readonly FieldId[],
	form: FormData,
	reader: Reader,
	offered: Offered = {}
): Partial<Record<FieldId, Entry>> | undefined {
	const entries: Partial<Record<FieldId, Entry>> = {};
	for (const id of ids) {
		const entry = readOne(id, form, reader, offered[id]);
		if (entry === 'tampered') return undefined;
		entries[id] = entry;
	}
	return entries;
}

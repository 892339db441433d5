import { parseQuantity, type DefectId, type FieldId, type QuantityProblem } from '$lib/engine';
import { readEntries, type Entry, type Reader } from '$lib/paper';
import { typed } from '../typed';
import { READING_IDS, READINGS, type ReadingId } from './conditions';
import { fieldsFor } from './incident-fields';

type Reading = { readonly typed: string; readonly value: number | null; readonly problem?: QuantityProblem };

/** A report as it was typed, readable or not. */
export type ReportDraft = {
	readonly defect: DefectId;
	readonly job: string;
	readonly on: string;
	readonly person: string;
	/** Empty where not known. */
	readonly coating: string;
	readonly material: string;
	readonly note: string;
	readonly readings: Readonly<Record<ReadingId, Reading>>;
	readonly written: Partial<Record<FieldId, Entry>>;
};

const asReadings = (of: (id: ReadingId) => Reading) =>
	Object.fromEntries(READING_IDS.map((id) => [id, of(id)])) as Record<ReadingId, Reading>;

export const blankReport = (defect: DefectId, today: string): ReportDraft => ({
	defect,
	job: '',
	on: today,
	person: '',
	coating: '',
	material: '',
	note: '',
	readings: asReadings(() => ({ typed: '', value: null })),
	written: {}
});

/** Reads a posted report; undefined where no form of ours can have sent it. */
export function readReport(defect: DefectId, form: FormData, reader: Reader): ReportDraft | undefined {
	const written = readEntries(fieldsFor(defect), form, reader);
	if (!written) return undefined;
	const line = (name: string) => typed(form, name).trim();
	return {
		defect,
		job: line('job'),
		on: line('on'),
		person: line('person'),
		coating: line('coating'),
		material: line('material'),
		note: typed(form, 'note'),
		readings: asReadings((id) => {
			const text = line(id);
			if (!text) return { typed: '', value: null };
			const parsed = parseQuantity(text, READINGS[id], { lang: reader.lang });
			const kept = text.slice(0, 60);
			return parsed.ok
				? { typed: kept, value: parsed.value }
				: { typed: kept, value: null, problem: parsed.problem };
		}),
		written
	};
}

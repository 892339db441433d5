import { isIsoDate, practicalEntries, type PracticalEntry } from '$lib/learning';
import type { Reader } from '$lib/paper';
import { isId, type Refusal } from '$lib/records';
import { EntrySheet } from './entry-sheet';
import { localInstant } from './local-instant';
import { unitBeside, type PracticalBench } from './practical-bench';
import { readValues } from './read-values';

const SEEN = ['met', 'not-met', 'not-seen'] as const;
type Seen = (typeof SEEN)[number];

/** Lines for instruments on the form. */
export const INSTRUMENT_LINES = [0, 1, 2, 3] as const;

export const gateField = (id: string) => `gate-${id}`;
export const readingField = (id: string, place: number) => `reading-${id}-${place}`;

const listed = (text: string) =>
	text
		.split(/[\s,;]+/)
		.filter(Boolean)
		.slice(0, 20);

function readGates(sheet: EntrySheet, { plan }: PracticalBench) {
	return plan.gates.map(({ id, critical }) => {
		const seen = sheet.take(gateField(id));
		if (!(SEEN as readonly string[]).includes(seen)) sheet.wrong(gateField(id), 'unanswered');
		return { gate: id, seen: seen as Seen, critical };
	});
}

/** A practical that is refused may end early, so only an accepted one needs every reading. */
function readReadings(
	sheet: EntrySheet,
	{ plan }: PracticalBench,
	reader: Reader,
	complete: boolean
): PracticalEntry[] {
	return plan.readings.flatMap((asked) => {
		const places = asked.places.map((_, at) => {
			const name = readingField(asked.id, at);
			const read = readValues(sheet.take(name), asked.dimension, {
				lang: reader.lang,
				fallbackUnit: unitBeside(asked, reader)
			});
			if (!read.ok) {
				sheet.wrong(name, { quantity: read.problem });
				return [];
			}
			if (complete && read.values.length < asked.each)
				sheet.wrong(name, read.values.length === 0 ? 'empty' : 'too-few');
			return read.values;
		});
		return practicalEntries(asked, places);
	});
}

function readTakenAt(sheet: EntrySheet, timeZone: string): string {
	const [day, time] = [sheet.take('day').trim(), sheet.take('time').trim()];
	if (!isIsoDate(day)) {
		sheet.wrong('day', 'not-a-day');
		return '';
	}
	const at = localInstant(day, time, timeZone);
	if (at === null) sheet.wrong('time', 'not-a-time');
	return at ?? '';
}

function readInstruments(sheet: EntrySheet) {
	const instruments = INSTRUMENT_LINES.flatMap((at) => {
		const [serial, due] = [sheet.take(`serial-${at}`).trim(), sheet.take(`due-${at}`).trim()];
		if (!serial && !due) return [];
		if (!isId(serial)) sheet.wrong(`serial-${at}`, serial ? 'not-an-id' : 'empty');
		if (due && !isIsoDate(due)) sheet.wrong(`due-${at}`, 'not-a-day');
		return [{ instrument: serial, calibrationDue: due || null }];
	});
	if (instruments.length === 0) sheet.wrong('serial-0', 'no-instrument');
	return instruments;
}

/** What a supervisor entered: the wish for the record, and what was typed with the problem of each field that has one. */
export function readPractical(form: FormData, bench: PracticalBench, timeZone: string, reader: Reader) {
	const sheet = new EntrySheet(form);
	const result = sheet.take('result');
	if (result !== 'accepted' && result !== 'refused') sheet.wrong('result', 'unanswered');
	const panels = listed(sheet.take('panels'));
	if (panels.length === 0) sheet.wrong('panels', 'empty');
	else if (!panels.every(isId)) sheet.wrong('panels', 'not-an-id');
	const wish = {
		sheet: bench.sheet,
		takenAt: readTakenAt(sheet, timeZone),
		panels,
		instruments: readInstruments(sheet),
		gates: readGates(sheet, bench),
		readings: readReadings(sheet, bench, reader, result === 'accepted').map((entry) => ({
			...entry,
			values: [...entry.values],
			// the record judges for itself
			accepted: false
		})),
		result: result as 'accepted' | 'refused'
	};
	const witnessed = sheet.take('witnessed') === 'yes';
	const [reason, note] = [sheet.take('reason'), sheet.take('note')];
	const { typed: entered, problems } = sheet;
	return { wish, witnessed, reason, note, typed: entered, problems, ok: Object.keys(problems).length === 0 };
}

export type ReadPractical = ReturnType<typeof readPractical>;

const FIELD_OF: Readonly<Record<string, string>> = {
	takenAt: 'day',
	reason: 'reason',
	witness: 'witnessed',
	panels: 'panels',
	instruments: 'serial-0'
};

/** What was entered, with the record's refusal at the field it is about, where it is about one. */
export function refusedAt(read: ReadPractical, refusal: Refusal): ReadPractical {
	const [gate] = refusal.field === 'gates' ? (refusal.detail ?? []) : [];
	const field = gate ? gateField(gate) : FIELD_OF[refusal.field?.split('.')[0] ?? ''];
	return field ? { ...read, problems: { ...read.problems, [field]: { refusal } } } : read;
}

import type { DataSheet } from '$lib/engine';
import { format, say } from '$lib/i18n';
import { practicalGateNamed, practicalReadingNamed } from '$lib/learning';
import { quantityText, windowText, type Reader } from '$lib/paper';
import { dayOf, type Practical } from '$lib/records';
import type { App } from '../app';
import { nameOf, shownText } from '../shown-text';
import { shopTime } from './shop-time';

type Recorded = Practical['readings'][number];

/** A reading in the reader's units; one of another version of the practical stays as it lies in the record, in SI. */
function readingView({ reading, unit, values, least, most, accepted }: Recorded, reader: Reader) {
	const named = practicalReadingNamed(reading);
	const limited = least !== null || most !== null;
	if (!named) {
		const plain = (value: number) => `${format.number(value, reader.lang, { atMost: 12 })} ${unit}`;
		return {
			id: reading,
			label: reading,
			values: values.map(plain),
			limits: limited ? `${least ?? ''} … ${most ?? ''} ${unit}` : null,
			accepted
		};
	}
	const { label, dimension } = named;
	return {
		id: reading,
		label: say(label, reader.lang),
		values: values.map((value) => quantityText(value, dimension, reader)),
		limits: limited
			? windowText({ min: least ?? -Infinity, max: most ?? Infinity }, dimension, reader)
			: null,
		accepted
	};
}

/** The coating on the panels, by the title its sheet had then. */
const sheetName = ({ journal }: Pick<App, 'journal'>, { sheet, revision }: Practical['sheet']) => {
	const found = journal.state.shop.sheets.get(sheet)?.find((each) => each.revision === revision);
	return {
		title: found ? (found.content as unknown as DataSheet).title : sheet,
		revision
	};
};

/** A practical as it was recorded, in words and in the reader's units. */
export function practicalView(app: App, practical: Practical, reader: Reader) {
	const { lang } = reader;
	const { override, note } = practical;
	const takenOn = dayOf(app.journal.state, practical.takenAt);
	return {
		id: practical.practical,
		result: practical.result,
		takenAt: shopTime(app, practical.takenAt, lang),
		recordedAt: shopTime(app, practical.recordedAt, lang),
		late: practical.late,
		witness: nameOf(app, practical.witness, lang),
		sheet: sheetName(app, practical.sheet),
		panels: practical.panels,
		instruments: practical.instruments.map(({ instrument, calibrationDue }) => ({
			instrument,
			due: calibrationDue && format.date(calibrationDue, lang),
			over: calibrationDue !== null && calibrationDue < takenOn
		})),
		gates: practical.gates.map(({ gate, seen, critical }) => {
			const label = practicalGateNamed(gate);
			return { id: gate, label: label ? say(label, lang) : gate, seen, critical };
		}),
		readings: practical.readings.map((reading) => readingView(reading, reader)),
		override: override && { reason: shownText(app, override.reason, lang) },
		note: note && shownText(app, note, lang)
	};
}

export type PracticalEvidence = ReturnType<typeof practicalView>;

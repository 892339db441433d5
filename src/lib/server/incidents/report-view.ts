import { STATION_NAMES, STATIONS, SUBSTRATES, UNITS, field, type FieldId } from '$lib/engine';
import { incidents, say, ticket } from '$lib/i18n';
import { fieldView, type Reader } from '$lib/paper';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { READING_IDS, READINGS, type ReadingId } from './conditions';
import { fieldsFor } from './incident-fields';
import { peopleForReport } from './people-for-report';
import type { ReportDraft } from './report-draft';

type Problems = Readonly<Record<string, string>>;

/** The report form as plain data: what is asked, what was typed, what has to be put right. */
export function reportView(app: App, draft: ReportDraft, problems: Problems, reader: Reader) {
	const { lang } = reader;
	const words = incidents[lang];
	const error = (name: string) => (problems[name] ? { error: problems[name] } : {});
	const text = (name: 'job' | 'on' | 'note') => ({
		id: `report-${name}`,
		name,
		label: words[name],
		value: draft[name],
		...error(name)
	});
	const choice = (
		name: 'person' | 'coating' | 'material',
		options: { id: string; label: string }[],
		value = draft[name]
	) => ({
		kind: 'choice' as const,
		id: `report-${name}`,
		name,
		label: words[name],
		options,
		value,
		...error(name)
	});
	const notKnown = { id: '', label: words.notKnown };
	const reading = (id: ReadingId) => ({
		kind: 'quantity' as const,
		id: `report-${id}`,
		name: id,
		label: ticket[lang][id],
		value: draft.readings[id].typed,
		units: UNITS[READINGS[id]].map((unit) => say(unit.label, lang)).slice(0, 2),
		...error(id)
	});
	const line = (id: FieldId) => ({ ...fieldView(id, draft.written[id] ?? {}, reader), ...error(id) });
	const lines = fieldsFor(draft.defect);
	return {
		job: text('job'),
		on: text('on'),
		note: { ...text('note'), hint: words.noteHint },
		person: choice('person', peopleForReport(app, lang)),
		coating: choice('coating', [
			notKnown,
			...Object.values(shopInForce(app).shop.sheets).map(({ id, title }) => ({ id, label: title }))
		]),
		material: choice('material', [
			notKnown,
			...Object.entries(SUBSTRATES).map(([id, { name }]) => ({ id, label: say(name, lang) }))
		]),
		readings: READING_IDS.map(reading),
		stations: STATIONS.map((station) => ({
			station,
			name: say(STATION_NAMES[station], lang),
			fields: lines.filter((id) => field(id).station === station).map(line)
		})).filter(({ fields }) => fields.length > 0)
	};
}

export type ReportView = ReturnType<typeof reportView>;

import type { RequestEvent } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';
import type { Answers } from '$lib/engine';
import { reportIncident, type Json, type Outcome } from '$lib/records';
import { act } from '../act';
import { withTexts } from '../with-texts';
import { READING_IDS, type Conditions } from './conditions';
import type { ReportDraft } from './report-draft';

function conditionsOf({ on, coating, material, readings, written }: ReportDraft): Conditions {
	const [air, humidity, part, paint] = READING_IDS.map((id) => readings[id].value);
	const answers: Answers = Object.fromEntries(
		Object.entries(written).flatMap(([id, entry]) => (entry?.answer ? [[id, entry.answer]] : []))
	);
	return {
		on,
		coating: coating || null,
		material: (material || null) as Conditions['material'],
		air: air ?? null,
		humidity: humidity ?? null,
		part: part ?? null,
		paint: paint ?? null,
		written: answers
	};
}

/** Enters a report that has nothing left to put right, and answers the incident's id with what the record said. */
export async function enterReport(
	event: RequestEvent,
	draft: ReportDraft
): Promise<{ incident: string; outcome: Outcome }> {
	const { app, lang } = event.locals;
	const { defect, job, person } = draft;
	const incident = randomUUID();
	const conditions = conditionsOf(draft) as unknown as Json;
	const outcome = await withTexts(app, { note: draft.note }, lang, ({ note }) =>
		act(event, reportIncident, { incident, defect, job, person, conditions, note })
	);
	return { incident, outcome };
}

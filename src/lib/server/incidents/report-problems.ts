import { SUBSTRATES } from '$lib/engine';
import { incidents } from '$lib/i18n';
import { problemWords, type Reader } from '$lib/paper';
import { dayOf } from '$lib/records';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { canBe, READING_IDS } from './conditions';
import { LONGEST_TEXT } from './longest-text';
import { peopleForReport } from './people-for-report';
import type { ReportDraft } from './report-draft';

/** As the record names a job: no spaces, so that no sentence gets into it. */
const JOB = /^[A-Za-z0-9][A-Za-z0-9._:/#-]{0,59}$/;
/** A day of the calendar: 30 February has the form of one and is none. */
const isDay = (text: string) =>
	/^\d{4}-\d\d-\d\d$/.test(text) && new Date(`${text}T00:00:00Z`).toJSON()?.startsWith(text) === true;

/** What has to be put right in a report before it can be entered: field to words; empty where nothing. */
export function reportProblems(app: App, draft: ReportDraft, reader: Reader): Record<string, string> {
	const words = incidents[reader.lang].problem;
	const problems: Record<string, string> = {};
	const today = dayOf(app.journal.state, app.now().toISOString());
	if (!JOB.test(draft.job)) problems.job = words.job;
	if (!isDay(draft.on) || draft.on > today) problems.on = words.on;
	if (!peopleForReport(app, reader.lang).some(({ id }) => id === draft.person))
		problems.person = words.person;
	const { sheets } = shopInForce(app).shop;
	if (draft.coating && !Object.hasOwn(sheets, draft.coating)) problems.coating = words.choice;
	if (draft.material && !Object.hasOwn(SUBSTRATES, draft.material)) problems.material = words.choice;
	if (draft.note.length > LONGEST_TEXT) problems.note = words.tooLong(LONGEST_TEXT);
	for (const id of READING_IDS) {
		const { value, problem } = draft.readings[id];
		if (problem) problems[id] = problemWords(problem, reader);
		else if (value !== null && !canBe(id, value)) problems[id] = words.cannotBe;
	}
	for (const [id, entry] of Object.entries(draft.written))
		if (entry?.problem) problems[id] = problemWords(entry.problem, reader);
	return problems;
}

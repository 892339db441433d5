import type { RequestEvent } from '@sveltejs/kit';
import { parseQuantity } from '$lib/engine';
import { incidents } from '$lib/i18n';
import { problemWords, type Reader } from '$lib/paper';
import { closeIncident, type Incident, type Outcome } from '$lib/records';
import { act } from '../act';
import { typed } from '../typed';
import { withTexts } from '../with-texts';
import { LONGEST_TEXT } from './longest-text';
import type { ToCorrect } from './to-correct';

/** Closes an incident on what was seen since: jobs looked at, and on how many of them the defect came back. */
export async function close(
	event: RequestEvent,
	incident: Incident,
	form: FormData,
	reader: Reader
): Promise<Outcome | ToCorrect> {
	const words = incidents[reader.lang].problem;
	const problems: Record<string, string> = {};
	const count = (name: 'jobsChecked' | 'repeats') => {
		const parsed = parseQuantity(typed(form, name), 'count', { lang: reader.lang });
		if (parsed.ok) return Number(parsed.value);
		problems[name] = problemWords(parsed.problem, reader);
		return 0;
	};
	const jobsChecked = count('jobsChecked');
	const repeats = count('repeats');
	if (!problems.jobsChecked && jobsChecked < 1) problems.jobsChecked = words.oneJob;
	if (!problems.repeats && repeats > jobsChecked) problems.repeats = words.moreThanLookedAt;
	const note = typed(form, 'note');
	if (note.length > LONGEST_TEXT) problems.note = words.tooLong(LONGEST_TEXT);
	if (Object.keys(problems).length) return { problems };
	return withTexts(event.locals.app, { note }, event.locals.lang, (refs) =>
		act(
			event,
			closeIncident,
			{ incident: incident.incident, jobsChecked, repeats, note: refs.note },
			{ what: 'close-incident', person: incident.person }
		)
	);
}

import type { RequestEvent } from '@sveltejs/kit';
import { incidents } from '$lib/i18n';
import { recordCause, type Incident, type Outcome } from '$lib/records';
import { act } from '../act';
import { typed } from '../typed';
import { withTexts } from '../with-texts';
import { incidentCauses } from './incident-causes';
import { LONGEST_TEXT } from './longest-text';
import type { ToCorrect } from './to-correct';
import { asRecorded, type Shown } from './test-results';

/** Enters what the test of one cause showed. 'tampered' where the form names no cause of this incident. */
export async function recordTest(
	event: RequestEvent,
	incident: Incident,
	form: FormData
): Promise<Outcome | ToCorrect | 'tampered'> {
	const words = incidents[event.locals.lang].problem;
	const rule = typed(form, 'rule');
	const ways = incidentCauses(event.locals.app, incident).filter((cause) => cause.rule === rule);
	if (ways.length === 0) return 'tampered';
	const answer = typed(form, 'shown');
	if (!answer) return { problems: { shown: words.unanswered } };
	const possible: readonly Shown[] = ['kept', 'unclear', ...ways.map(({ direction }) => direction)];
	const shown = possible.find((one) => one === answer);
	if (!shown) return 'tampered';
	const note = typed(form, 'note');
	if (note.length > LONGEST_TEXT) return { problems: { note: words.tooLong(LONGEST_TEXT) } };
	return withTexts(event.locals.app, { note }, event.locals.lang, (refs) =>
		act(event, recordCause, { incident: incident.incident, ...asRecorded(rule, shown), note: refs.note })
	);
}

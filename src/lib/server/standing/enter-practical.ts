import { randomUUID } from 'node:crypto';
import type { RequestEvent } from '@sveltejs/kit';
import type { CompetencyId } from '$lib/learning';
import { recordPractical, type Outcome } from '$lib/records';
import { act } from '../act';
import { requirePerson } from '../guard';
import { withTexts } from '../with-texts';
import type { ReadPractical } from './practical-form';

/** Enters a practical in the record. Its witness is whoever says that they watched it, and nobody else. */
export function enterPractical(
	event: RequestEvent,
	{ person, competency }: { person: string; competency: CompetencyId },
	{ wish, witnessed, reason, note }: ReadPractical
): Promise<Outcome> {
	const { app, lang } = event.locals;
	const witness = witnessed ? requirePerson(event).id : '';
	return withTexts(app, { reason, note }, lang, (refs) =>
		act(
			event,
			recordPractical,
			{
				...wish,
				practical: randomUUID(),
				person,
				competency,
				witness,
				note: refs.note,
				reason: refs.reason && { ref: refs.reason, length: reason.trim().length }
			},
			{ what: 'practical', person }
		)
	);
}

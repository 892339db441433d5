import { randomUUID } from 'node:crypto';
import type { RequestEvent } from '@sveltejs/kit';
import type { CompetencyId } from '$lib/learning';
import { signOff, signRefresher, type Outcome } from '$lib/records';
import { act } from '../act';
import { withTexts } from '../with-texts';
import { onRefresherOf } from './own-of';
import type { ReadSignature } from './signature-form';

/** One person, one competency: a signature for the whole of it, or for the refresher of one incident. */
export function sign(
	event: RequestEvent,
	{ person, competency, incident }: { person: string; competency: CompetencyId; incident: string | null },
	{ chosen, conflict, watchedBy }: ReadSignature
): Promise<Outcome> {
	const { app, lang } = event.locals;
	const { on } = chosen;
	if (incident)
		return act(
			event,
			onRefresherOf({ person, competency }, signRefresher),
			{ incident, conflict, watchedBy, on },
			{ what: 'sign-refresher', person }
		);
	return withTexts(app, { reason: chosen.reason }, lang, ({ reason }) =>
		act(
			event,
			signOff,
			{
				signOff: randomUUID(),
				person,
				competency,
				conflict,
				watchedBy,
				on,
				reason: reason && { ref: reason, length: chosen.reason.trim().length }
			},
			{ what: 'sign-off', person }
		)
	);
}

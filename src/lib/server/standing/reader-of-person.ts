import { error, type RequestEvent } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { requirePerson, requireRole } from '../guard';
import type { Who } from '../who';

/**
 * Whoever may read a person's standing: that person, supervisors, leads, and an auditor while the record is open to
 * them.
 * @throws Redirect | HttpError 401 | 403 | 404
 */
export function requireReaderOf(event: RequestEvent, person: string): Who {
	const { app, lang } = event.locals;
	const who = requirePerson(event);
	if (who.id !== person) requireRole(event, 'supervisor', 'auditor');
	if (!app.journal.state.people.has(person)) error(404, noPage[lang].problem[404].title);
	return who;
}

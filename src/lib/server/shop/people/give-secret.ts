import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { requireRole } from '../../guard';
import { setSecret } from '../../set-secret';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { newSecretProblems } from './new-secret';

/** A lead has a person get a new secret; what was typed is never sent back. */
export const giveSecret = async (event: RequestEvent, person: string): Promise<ActionFailure<SentBack>> => {
	const lead = requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const typed = allTyped(await event.request.formData(), ['secret', 'again']);
	const kept = { at: 'secret' };
	const roles = app.journal.state.people.get(person)?.roles ?? [];
	const problems = newSecretProblems(typed, roles, lang);
	if (Object.keys(problems).length > 0) return sentBack(kept, problems);
	const outcome = await setSecret(app, { person, secret: typed.secret }, lead.id);
	if (!outcome.ok) return refusedAt(outcome, kept, { fields: [], lang });
	redirect(303, `/${lang}/shop/people/${person}?done=secret`);
};

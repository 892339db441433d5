import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { shopPeople } from '$lib/i18n';
import { setRoles } from '$lib/records';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { secretKindFor } from '../../secret-kind';
import { setSecret } from '../../set-secret';
import { momentOf } from '../../standing/moment';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { chosenRoles } from './chosen-roles';
import { newSecretProblems } from './new-secret';

/**
 * A lead changes what a person may do. Where the new roles ask for the other kind of secret, it is set first: at no
 * moment does somebody sign who got in with a PIN.
 */
export const changeRoles = async (event: RequestEvent, person: string): Promise<ActionFailure<SentBack>> => {
	const lead = requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const { state } = app.journal;
	const form = await event.request.formData();
	const { secret, again } = allTyped(form, ['secret', 'again']);
	const { roles, problem } = chosenRoles(form, lang);
	const kept = { at: 'roles', roles };
	if (problem) return sentBack(kept, { roles: problem });

	const words = {
		fields: ['roles'],
		lang,
		inWords: ({ detail }: { detail?: readonly string[] }) =>
			detail?.includes('auditor-only') ? shopPeople[lang].auditorStays : null
	};
	const foreseen = setRoles(state, { person, roles }, { ...momentOf(app), actor: lead.id });
	if (!foreseen.ok) return refusedAt(foreseen, kept, words);

	const kind = secretKindFor(roles);
	if (kind !== secretKindFor(state.people.get(person)?.roles ?? [])) {
		if (!secret) return sentBack(kept, { secret: shopPeople[lang].newSecretNeeded[kind] });
		const problems = newSecretProblems({ secret, again }, roles, lang);
		if (Object.keys(problems).length > 0) return sentBack(kept, problems);
		const set = await setSecret(app, { person, secret }, lead.id);
		if (!set.ok) return refusedAt(set, kept, words);
	}
	const outcome = await act(event, setRoles, { person, roles });
	if (!outcome.ok) return refusedAt(outcome, kept, words);
	redirect(303, `/${lang}/shop/people/${person}?done=roles`);
};

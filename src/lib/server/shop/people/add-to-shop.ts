import { randomUUID } from 'node:crypto';
import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { isLang, shop } from '$lib/i18n';
import { requireRole } from '../../guard';
import { join } from '../../join';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { chosenRoles } from './chosen-roles';
import { newSecretProblems } from './new-secret';

const LONGEST_NAME = 200;

const nameProblem = (name: string, words: (typeof shop)['en']): string | null => {
	if (!name.trim()) return words.empty;
	return name.length > LONGEST_NAME ? words.tooLong(LONGEST_NAME) : null;
};

/** A lead adds a person with the secret they start with, and is led to that person's page. */
export const addToShop = async (event: RequestEvent): Promise<ActionFailure<SentBack>> => {
	const lead = requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const form = await event.request.formData();
	const { name, lang: reads, secret, again } = allTyped(form, ['name', 'lang', 'secret', 'again']);
	const { roles, problem } = chosenRoles(form, lang);
	const kept = { name, lang: reads, roles };

	const problems: Record<string, string> = problem ? { roles: problem } : {};
	const misnamed = nameProblem(name, shop[lang]);
	if (misnamed) problems.name = misnamed;
	if (!isLang(reads)) problems.lang = shop[lang].choose;
	// which kind of secret is due follows from the roles
	if (!problem) Object.assign(problems, newSecretProblems({ secret, again }, roles, lang));
	if (!isLang(reads) || Object.keys(problems).length > 0) return sentBack(kept, problems);

	const person = randomUUID();
	const outcome = await join(app, { person, name, roles, lang: reads, secret }, lead.id);
	if (!outcome.ok) return refusedAt(outcome, kept, { fields: ['name', 'roles'], lang });
	redirect(303, `/${lang}/shop/people/${person}?done=added`);
};

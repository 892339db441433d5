import { noteSecret, type Outcome } from '$lib/records';
import type { App } from './app';

/**
 * Sets a person's secret, notes in the journal who did it, and ends their sign-ins everywhere. What the secret must
 * be like is checked before, by `secretProblem`.
 * @param actor the person themselves or a lead
 */
export const setSecret = async (
	app: App,
	{ person, secret }: { person: string; secret: string },
	actor: string
): Promise<Outcome> => {
	// the note first: it refuses whoever may not, and a note without a new secret locks nobody out
	const outcome = await app.journal.act((state, acting) => noteSecret(state, { person }, acting), actor);
	if (!outcome.ok) return outcome;
	await app.secrets.set(person, secret);
	app.sessions.endAllOf(person);
	app.wrongTries.person.clear(person);
	return outcome;
};

import { erasePerson, type Outcome } from '$lib/records';
import type { App } from './app';
import { erasures } from './erasures';

/**
 * Erases a person's name, every free text about them and their secret, and puts them out everywhere. The entries
 * about them stay.
 * @param actor a lead
 */
export const forget = async (app: App, person: string, actor: string): Promise<Outcome> => {
	const outcome = await app.journal.act((state, acting) => erasePerson(state, { person }, acting), actor);
	if (!outcome.ok) return outcome;
	await app.texts.erase(erasures(app.journal.state));
	await app.secrets.remove(person);
	app.sessions.endAllOf(person);
	return outcome;
};

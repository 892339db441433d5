import { addPerson, type AddPerson, type Outcome } from '$lib/records';
import type { App } from './app';
import { setSecret } from './set-secret';
import { withTexts } from './with-texts';

/** Somebody who joins the shop, with the secret they start with. */
export type Joining = Omit<AddPerson, 'name'> & { readonly name: string; readonly secret: string };

/**
 * A lead adds somebody who can sign in from then on; an auditor once their access was opened.
 * @param actor the lead
 */
export const join = async (
	app: App,
	{ name, secret, ...person }: Joining,
	actor: string
): Promise<Outcome> => {
	const outcome = await withTexts(app, { name }, person.lang, (refs) =>
		app.journal.act(
			(state, acting) => addPerson(state, { ...person, name: refs.name } as AddPerson, acting),
			actor
		)
	);
	return outcome.ok ? setSecret(app, { person: person.person, secret }, actor) : outcome;
};

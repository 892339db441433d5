import type { Lang } from '$lib/i18n';
import type { Role } from '$lib/records';
import type { App } from './app';
import { secretKindFor } from './secret-kind';
import { nameOf } from './shown-text';
import { whoIs } from './who';

/** Somebody who can sign in, as the sign-in page lists them. */
export interface AtTheDoor {
	readonly id: string;
	readonly name: string;
	readonly roles: readonly Role[];
	/** Whether their secret is a PIN. */
	readonly digits: boolean;
}

/** Everyone who can sign in now, by name. */
export const crewAtTheDoor = (app: App, lang: Lang): AtTheDoor[] =>
	[...app.journal.state.people.keys()]
		.filter((id) => app.secrets.has(id))
		.flatMap((id) => whoIs(app.journal.state, id, app.now()) ?? [])
		.map(({ id, roles }) => ({
			id,
			roles,
			name: nameOf(app, id, lang),
			digits: secretKindFor(roles) === 'pin'
		}))
		.sort((a, b) => a.name.localeCompare(b.name, lang));

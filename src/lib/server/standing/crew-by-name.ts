import type { Lang } from '$lib/i18n';
import type { App } from '../app';
import { nameOf } from '../shown-text';

/** Everybody who works in the shop, by name and by nothing else. */
export const crewByName = (app: App, lang: Lang) =>
	[...app.journal.state.people.values()]
		.filter(({ erasedAt, roles }) => !erasedAt && !roles.includes('auditor'))
		.map(({ id, roles }) => ({ id, roles, name: nameOf(app, id, lang) }))
		.sort((a, b) => a.name.localeCompare(b.name, lang));

import type { Lang } from '$lib/i18n';
import type { App } from '../app';
import { nameOf } from '../shown-text';

/** Who can have done work in the shop, by name: everybody but those who only audit and those whose data was erased. */
export const peopleForReport = (app: App, lang: Lang) =>
	[...app.journal.state.people.values()]
		.filter(({ roles, erasedAt }) => !erasedAt && roles.some((role) => role !== 'auditor'))
		.map(({ id }) => ({ id, label: nameOf(app, id, lang) }))
		.toSorted((one, other) => one.label.localeCompare(other.label, lang));

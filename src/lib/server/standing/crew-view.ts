import type { Lang } from '$lib/i18n';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { areasOf } from './areas';
import { rackView } from './rack';
import { safetyView } from './safety-view';
import { waitingOf } from './waiting';

/** Everybody who works in the shop, by name and by nothing else: racks side by side, and who waits for what. */
export function crewView(app: App, lang: Lang) {
	const { state } = app.journal;
	const crew = [...state.people.values()]
		.filter(({ erasedAt, roles }) => !erasedAt && !roles.includes('auditor'))
		.map(({ id, roles }) => ({ id, roles, name: nameOf(app, id, lang) }))
		.sort((a, b) => a.name.localeCompare(b.name, lang));
	return crew.map(({ id, roles, name }) => {
		const areas = areasOf(app, id, lang);
		return {
			id,
			name,
			roles,
			href: `/${lang}/people/${id}`,
			panels: rackView(state, areas, (area) => `/${lang}/people/${id}#${area.id}`),
			safety: safetyView(app, id, lang).text,
			waiting: waitingOf(id, areas, lang)
		};
	});
}

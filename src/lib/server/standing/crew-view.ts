import type { Lang } from '$lib/i18n';
import type { App } from '../app';
import { areasOf } from './areas';
import { crewByName } from './crew-by-name';
import { rackView } from './rack';
import { safetyView } from './safety-view';
import { waitingOf } from './waiting';

/** Everybody who works in the shop: racks side by side, and who waits for what. */
export function crewView(app: App, lang: Lang) {
	const { state } = app.journal;
	return crewByName(app, lang).map(({ id, roles, name }) => {
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

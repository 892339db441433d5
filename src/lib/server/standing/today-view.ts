import type { Lang } from '$lib/i18n';
import { workAllowed, type WorkAllowed } from '$lib/learning';
import { dayOf } from '$lib/records';
import type { App } from '../app';
import { areasOf } from './areas';
import { datesOf } from './dates';
import { openWork } from './open-work';
import { rackView } from './rack';
import { safetyView } from './safety-view';

/** The day's sheet of one person: what they may do and how, what is open, which days to keep. */
export function todayView(app: App, person: string, lang: Lang) {
	const { state } = app.journal;
	const areas = areasOf(app, person, lang);
	const lines = areas.map(({ id, name, certification: { standing, validity, refreshers } }) => ({
		id,
		name,
		allowed: workAllowed(standing.state, refreshers.length > 0),
		because:
			refreshers.length > 0 && standing.state === 'signed' ? ('refresher-due' as const) : standing.state,
		until: standing.state === 'signed' ? (validity?.next.on ?? null) : null
	}));
	const how = (allowed: WorkAllowed) => lines.filter((line) => line.allowed === allowed);
	return {
		day: dayOf(state, app.now().toISOString()),
		may: { alone: how('alone'), supervised: how('supervised'), none: how('none') },
		panels: rackView(state, areas, ({ id }) => `/${lang}/people/${person}#${id}`),
		safety: safetyView(app, person, lang),
		work: openWork(app, person, areas, lang),
		dates: datesOf(app, areas)
	};
}

import { STATIONS, type Station } from '$lib/engine';
import { benchCard, today, type Lang } from '$lib/i18n';
import { cardScope, type WorkAllowed } from '$lib/learning';
import { mayAct } from '$lib/records';
import type { App } from '../app';
import { areasOf } from '../standing/areas';

/** How a card gives the settings of one station to a person, and why. */
export type StationScope = {
	readonly name: string;
	readonly given: WorkAllowed;
	readonly because: string;
};

export type CardAccess = {
	/** Whether there is any station the person gets settings of. */
	readonly may: boolean;
	readonly stations: Readonly<Record<Station, StationScope>>;
};

/** What a bench card gives a person: what the shop has signed for; everything to a lead, who answers for the shop. */
export function cardAccess(app: App, person: string, lang: Lang): CardAccess {
	const { state } = app.journal;
	const isLead = mayAct(state, person, 'lead', app.now().toISOString());
	const scopes = areasOf(app, person, lang).map(({ id, name, certification: { standing, refreshers } }) => {
		const due = refreshers.length > 0 && standing.state === 'signed';
		const scope: StationScope = {
			name,
			given: isLead ? 'alone' : cardScope(standing.state, refreshers.length > 0),
			because: isLead ? benchCard[lang].asLead : today[lang].because[due ? 'refresher-due' : standing.state]
		};
		return [id, scope] as const;
	});
	const stations = Object.fromEntries(scopes) as Record<Station, StationScope>;
	return { may: STATIONS.some((station) => stations[station].given !== 'none'), stations };
}

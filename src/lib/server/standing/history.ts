import type { Lang } from '$lib/i18n';
import type { Entry, EventKind } from '$lib/records';
import type { App } from '../app';
import { nameOf } from '../shown-text';
import { shopTime } from './shop-time';

const TOLD = [
	'training.started',
	'proving.opened',
	'proving.concluded',
	'practical.recorded',
	'signoff.granted',
	'signoff.second-person',
	'signoff.suspended',
	'signoff.reinstated',
	'signoff.withdrawn',
	'continuity.confirmed',
	'incident.decided',
	'refresher.signed'
] as const satisfies readonly EventKind[];

type Told = (typeof TOLD)[number];
type ToldEntry = Extract<Entry, { event: Told }>;

const isTold = (entry: Entry): entry is ToldEntry => (TOLD as readonly string[]).includes(entry.event);

/** The competency an entry is about, straight or by the run or sign-off it names. */
function competencyOf({ journal: { state } }: Pick<App, 'journal'>, { data }: ToldEntry): readonly string[] {
	if ('areas' in data) return data.areas;
	if ('competency' in data) return [data.competency];
	if ('signOff' in data) return [state.signOffs.byId.get(data.signOff)?.competency ?? ''];
	if ('run' in data) return [state.attempts.runs.get(data.run)?.competency ?? ''];
	return [];
}

/** What happened to a person in each competency, the latest first; entries of the record, none left out. */
export function historyOf(app: App, person: string, lang: Lang): Map<string, HistoryLine[]> {
	const lines = new Map<string, HistoryLine[]>();
	for (const entry of app.journal.entries) {
		if (!isTold(entry) || entry.data.person !== person) continue;
		for (const competency of competencyOf(app, entry)) {
			const line = {
				seq: entry.seq,
				event: entry.event,
				at: shopTime(app, entry.at, lang),
				by: entry.actor === 'program' ? null : nameOf(app, entry.actor, lang)
			};
			lines.set(competency, [line, ...(lines.get(competency) ?? [])]);
		}
	}
	return lines;
}

export type HistoryLine = {
	readonly seq: number;
	readonly event: Told;
	readonly at: string;
	/** Null for what the program entered by itself. */
	readonly by: string | null;
};

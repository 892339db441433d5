import { fieldsAt, type PracticePart } from '$lib/drills';
import type { FieldId, Job, Plan, Station } from '$lib/engine';
import type { Entry } from '$lib/paper';
import type { Json } from '$lib/records';
import type { App } from '../app';

/** How far the hints for a field were opened: 0 none, 1 where to look, 2 the rule, 3 the worked line. */
export type HintStep = 0 | 1 | 2 | 3;

/** A practice drill in hand. It lives on the server until it is handed in, and stays to be looked at afterwards. */
export type PracticeDraft = {
	readonly attempt: string;
	readonly seed: number;
	readonly breadth: 1 | 2 | 3;
	readonly part: PracticePart;
	readonly valuesHash: string;
	readonly job: Job;
	readonly plan: Plan;
	readonly traps: readonly string[];
	readonly stations: readonly Station[];
	/** Index of the station in hand. */
	readonly at: number;
	readonly entries: Partial<Record<FieldId, Entry>>;
	/** Stations that were checked at least once: their findings are shown. */
	readonly checked: readonly Station[];
	readonly hints: Partial<Record<FieldId, HintStep>>;
	readonly handedIn: boolean;
};

/** Every field the drill asks for, in the order of its stations. */
export const askedIn = ({ plan, stations }: Pick<PracticeDraft, 'plan' | 'stations'>): FieldId[] =>
	stations.flatMap((station) => fieldsAt(plan, station));

const key = (person: string, attempt: string) => `practice ${person} ${attempt}`;
const current = (person: string) => `practice ${person}`;

/** The drill of that person; nobody sees another's. */
export const practiceDraft = ({ drafts }: App, person: string, attempt: string) =>
	drafts.get<Json>(key(person, attempt)) as PracticeDraft | undefined;

/** The person's drill in hand, if any. */
export const practiceInHand = (app: App, person: string) => {
	const attempt = app.drafts.get<string>(current(person));
	return attempt === undefined ? undefined : practiceDraft(app, person, attempt);
};

export async function keepPractice({ drafts }: App, person: string, draft: PracticeDraft): Promise<void> {
	const before = drafts.get<string>(current(person));
	if (before !== undefined && before !== draft.attempt) await drafts.drop(key(person, before));
	// undefined entries of a form have no place in JSON
	await drafts.put(key(person, draft.attempt), JSON.parse(JSON.stringify(draft)) as Json);
	await drafts.put(current(person), draft.attempt);
}

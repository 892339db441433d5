import type { Breadth, DrillStep, PracticePart } from '$lib/drills';
import type { FieldId, Job, Plan } from '$lib/engine';
import type { Support } from '$lib/learning';
import type { Entry, Offered } from '$lib/paper';
import type { Json } from '$lib/records';
import type { App } from '../app';

/** How far the hints for a field were opened: 0 none, 1 where to look, 2 the rule, 3 the worked line. */
export type HintStep = 0 | 1 | 2 | 3;

/** A practice drill in hand. It lives on the server until it is handed in, and stays to be looked at afterwards. */
export type PracticeDraft = {
	readonly attempt: string;
	readonly seed: number;
	readonly breadth: Breadth;
	readonly part: PracticePart;
	/** How much was filled in when it was issued: all of it to read, half, or nothing. */
	readonly support: Support;
	readonly valuesHash: string;
	readonly job: Job;
	readonly plan: Plan;
	readonly traps: readonly string[];
	readonly steps: readonly DrillStep[];
	/** Fields that are filled in right from the start and not asked. */
	readonly given: readonly FieldId[];
	/** Index of the step in hand. */
	readonly at: number;
	readonly entries: Partial<Record<FieldId, Entry>>;
	/** Flow of the gun as typed at its bench, which is no field of the sheet; null where nothing was typed. */
	readonly flow: string | null;
	/** Steps that were checked at least once, by index: what was found is shown. */
	readonly checked: readonly number[];
	/** Rules that were not kept when their step was checked for the first time. */
	readonly firstFindings: readonly string[];
	readonly hints: Partial<Record<FieldId, HintStep>>;
	readonly handedIn: boolean;
};

const left = (ids: readonly FieldId[], given: readonly FieldId[]) => ids.filter((id) => !given.includes(id));

/** The step in hand, and of its fields those that are asked. */
export const stepInHand = ({ steps, at }: PracticeDraft): DrillStep => steps[at]!;
export const askedNow = (draft: PracticeDraft): FieldId[] => left(stepInHand(draft).fields, draft.given);

/** Every field the drill asks for, in the order of its steps. */
export const askedIn = ({ steps, given }: Pick<PracticeDraft, 'steps' | 'given'>): FieldId[] =>
	left(
		steps.flatMap(({ fields }) => fields),
		given
	);

/** Options of the drill's questions, where they are not the fields' own. */
export const offeredIn = ({ plan }: Pick<PracticeDraft, 'plan'>): Offered =>
	Object.fromEntries(plan.fields.flatMap(({ field, offered }) => (offered ? [[field, offered]] : [])));

const key = (person: string, attempt: string) => `practice ${person} ${attempt}`;
const current = (person: string) => `practice ${person}`;

/** The drill of that person; nobody sees another's. A drill kept by an older program is gone. */
export const practiceDraft = ({ drafts }: App, person: string, attempt: string) => {
	const draft = drafts.get<Json>(key(person, attempt)) as PracticeDraft | undefined;
	return draft?.steps ? draft : undefined;
};

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

/** Puts the person's drill in hand away without a trace. */
export async function dropPractice(
	{ drafts }: App,
	person: string,
	{ attempt }: PracticeDraft
): Promise<void> {
	await drafts.drop(key(person, attempt));
	if (drafts.get<string>(current(person)) === attempt) await drafts.drop(current(person));
}

import { partSkill } from '$lib/drills';
import type { Skill } from '$lib/engine';
import type { App } from '../app';
import { dropPractice, type PracticeDraft } from './draft';

type Seen = Partial<Record<Skill, number>>;

const key = (person: string) => `worked ${person}`;

const seen = ({ drafts }: App, person: string): Seen => drafts.get<Record<string, number>>(key(person)) ?? {};

/** Worked drills of a skill that the person has read to the end. No part of the record: losing it shows one more. */
export const workedSeen = (app: App, person: string, skill: Skill): number => seen(app, person)[skill] ?? 0;

/** A worked drill was read to its end. Nothing was done, so nothing is entered in the record. */
export async function readWorked(app: App, person: string, draft: PracticeDraft): Promise<void> {
	const skill = partSkill(draft.part);
	if (skill) {
		const before = seen(app, person);
		await app.drafts.put(key(person), { ...before, [skill]: (before[skill] ?? 0) + 1 });
	}
	await dropPractice(app, person, draft);
}

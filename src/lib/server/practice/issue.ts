import { randomUUID } from 'node:crypto';
import {
	LARGEST_SEED,
	makePracticeDrill,
	type Breadth,
	type DrillStep,
	type PracticePart
} from '$lib/drills';
import type { Answers, FieldId, Plan } from '$lib/engine';
import type { Support } from '$lib/learning';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { keepPractice } from './draft';

export type PracticeWish = {
	readonly breadth: Breadth;
	readonly part: PracticePart;
	readonly support: Support;
};

/** What is filled in from the start: everything, or of each page the first half, so that the end is left to do. */
const givenIn = (steps: readonly DrillStep[], support: Support): FieldId[] =>
	steps.flatMap(({ fields }) =>
		support === 'full' ? [] : support === 'half' ? fields.slice(0, Math.floor(fields.length / 2)) : fields
	);

/** Entries the drill starts with: what it fills in itself, right or wrong, and nothing else. */
const entriesFrom = (filled: Answers, { fields }: Plan, given: readonly FieldId[]) =>
	Object.fromEntries(
		fields.flatMap(({ field }) => {
			const answer = filled[field];
			return answer && !given.includes(field) ? [[field, { answer }]] : [];
		})
	);

/** Issues a ticket to practise on and answers its id. Undefined where the shop has no data sheet that gets that far. */
export async function issuePractice(
	app: App,
	person: string,
	{ breadth, part, support }: PracticeWish
): Promise<string | undefined> {
	const { shop, refs } = shopInForce(app);
	const attempt = randomUUID();
	const seed = app.seed() & LARGEST_SEED;
	const drill = makePracticeDrill({ seed, shop, breadth, part });
	if (!drill) return undefined;
	const { job, plan, traps, steps, filled } = drill;
	// what is filled in, wrong lines among them, is there to be worked on
	const helped = Object.keys(filled).length ? 'full' : support;
	const given = givenIn(steps, helped);
	await keepPractice(app, person, {
		...{ attempt, seed, breadth, part, support: helped },
		valuesHash: refs.valuesHash,
		...{ job, plan, traps, steps, given },
		at: 0,
		entries: entriesFrom(filled, plan, given),
		flow: null,
		checked: [],
		firstFindings: [],
		hints: {},
		handedIn: false
	});
	return attempt;
}

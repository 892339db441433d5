import { randomUUID } from 'node:crypto';
import { LARGEST_SEED, makePracticeDrill, type Breadth, type PracticePart } from '$lib/drills';
import type { App } from '../app';
import { shopInForce } from '../shop-in-force';
import { keepPractice } from './draft';

/** Issues a ticket to practise on and answers its id. Undefined where the shop has no data sheet that gets that far. */
export async function issuePractice(
	app: App,
	person: string,
	wish: { readonly breadth: Breadth; readonly part: PracticePart }
): Promise<string | undefined> {
	const { shop, refs } = shopInForce(app);
	const attempt = randomUUID();
	const seed = app.seed() & LARGEST_SEED;
	const drill = makePracticeDrill({ seed, shop, ...wish });
	if (!drill) return undefined;
	await keepPractice(app, person, {
		attempt,
		seed,
		...wish,
		valuesHash: refs.valuesHash,
		job: drill.job,
		plan: drill.plan,
		traps: drill.traps,
		stations: drill.stations,
		at: 0,
		entries: {},
		checked: [],
		hints: {},
		handedIn: false
	});
	return attempt;
}

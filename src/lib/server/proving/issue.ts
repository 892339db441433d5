import type { RequestEvent } from '@sveltejs/kit';
import { randomUUID } from 'node:crypto';
import { LARGEST_SEED, makeProvingDrill, type ProvingOrder } from '$lib/drills';
import { ENGINE_VERSION, rightAnswers, type Answers, type Plan } from '$lib/engine';
import { issueDrill, type IssueDrill, type Outcome } from '$lib/records';
import { act } from '../act';
import { requirePerson } from '../guard';
import { shopInForce } from '../shop-in-force';
import { conditionsAgain } from './conditions-again';
import { toJournal } from './issued';

const KIND = 'ticket-part';
/** The stations that are signed for, as the run names them. */
type Proven = ProvingOrder['competency'];

/** A seed nobody chose and this person has never met. */
function freshSeed({ locals: { app } }: RequestEvent, person: string): number {
	const seen = app.journal.state.attempts.seen.get(person);
	let seed = app.seed() & LARGEST_SEED;
	while (seen?.has(`${KIND} ${seed}`)) seed = app.seed() & LARGEST_SEED;
	return seed;
}

/**
 * Issues the next ticket of a run, drawn at random on the server. The seed and the expected answers go into the journal
 * and nowhere else. 'no-ticket' where the data sheets in force call for nothing the run is about.
 */
export async function issueProving(
	event: RequestEvent,
	run: string
): Promise<{ drill: string; outcome: Outcome } | 'no-ticket' | 'unknown-run'> {
	const { app } = event.locals;
	const person = requirePerson(event).id;
	const opened = app.journal.state.attempts.runs.get(run);
	if (!opened || opened.person !== person) return 'unknown-run';
	const { shop, refs } = shopInForce(app);

	const seed = freshSeed(event, person);
	const made = makeProvingDrill({
		seed,
		competency: opened.competency as Proven,
		shop,
		...(opened.rules.length ? { rules: opened.rules } : {}),
		...(opened.incident ? { like: conditionsAgain(app, opened.incident) } : {})
	});
	if (!made) return 'no-ticket';
	const { job, plan, asked } = made;
	const expected: Plan = { ...plan, fields: plan.fields.filter(({ field }) => asked.includes(field)) };
	const given: Answers = Object.fromEntries(
		Object.entries(rightAnswers(plan)).filter(([id]) => !(asked as readonly string[]).includes(id))
	);
	const drill = randomUUID();
	const wish: IssueDrill = {
		run,
		drill,
		kind: KIND,
		seed: String(seed),
		level: 1,
		engineVersion: ENGINE_VERSION,
		sheets: refs.sheets.map(({ sheet, revision, contentHash }) => ({ sheet, revision, hash: contentHash })),
		shopValuesHash: refs.valuesHash,
		asked: [...asked],
		rules: [...new Set(expected.fields.flatMap(({ demands }) => demands.map(({ rule }) => rule)))],
		...toJournal({ job, given }, expected)
	};
	return { drill, outcome: await act(event, issueDrill, wish) };
}

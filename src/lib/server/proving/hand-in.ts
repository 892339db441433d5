import type { RequestEvent } from '@sveltejs/kit';
import { breached, field, type Breached, type Competency } from '$lib/engine';
import { handInDrill, type Drill, type HandInDrill, type Json } from '$lib/records';
import { act } from '../act';
import { requirePerson } from '../guard';
import { answersIn } from '../practice/answers';
import { dropProving, type ProvingDraft } from './draft';
import { askedOf, expectedOf } from './issued';

const ids = (broken: readonly Breached[]) => [...new Set(broken.map(({ demand }) => demand.rule))];

/**
 * A drill is right when every asked field of its competency is in its green window and no safety stop occurred:
 * amber counts as wrong.
 */
export function judge(drill: Pick<Drill, 'asked' | 'expected'>, competency: Competency, draft: ProvingDraft) {
	const answers = answersIn(draft);
	const broken = breached(expectedOf(drill), answers, askedOf(drill));
	const safetyStops = broken.filter(({ demand }) => demand.severity === 'safety-stop');
	const own = broken.filter((one) => field(one.field).competency === competency);
	return {
		answers,
		right: own.length === 0 && safetyStops.length === 0,
		safetyMisses: ids(safetyStops),
		findings: ids(broken)
	};
}

/** Grades the answers with the windows of the day they were issued and enters them, once. */
export async function handInProving(event: RequestEvent, drill: Drill, draft: ProvingDraft) {
	const { app } = event.locals;
	const run = app.journal.state.attempts.runs.get(drill.run);
	if (!run) throw new Error(`drill ${drill.drill} belongs to no run`);
	const { answers, ...judged } = judge(drill, run.competency as Competency, draft);
	const wish: HandInDrill = { drill: drill.drill, answers: answers as unknown as Json, ...judged };
	const outcome = await act(event, handInDrill, wish);
	if (outcome.ok) await dropProving(app, requirePerson(event).id, drill.drill);
	return outcome;
}

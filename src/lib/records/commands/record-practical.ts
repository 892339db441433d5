import { accept, refuse, type Acting, type Decision, type Refused } from '../decision';
import type { EventData } from '../event';
import type { TextRef } from '../shapes';
import { trainingKey } from '../folds/training';
import type { State } from '../state';
import { unlessAuthorised } from './authorised';
import { ifOwn, isCompetency, unlessPerson, unlessRole } from './guards';
import { overriding, unlessReasoned, type Reason } from './override';

type Recorded = EventData<'practical.recorded'>;

export interface RecordPractical extends Pick<
	Recorded,
	| 'practical'
	| 'person'
	| 'competency'
	| 'witness'
	| 'takenAt'
	| 'sheet'
	| 'panels'
	| 'instruments'
	| 'gates'
	| 'readings'
	| 'result'
> {
	readonly note: TextRef | null;
	/** Needed to accept in spite of a reading outside its limits. */
	readonly reason: Reason | null;
}

const DAY_MS = 86_400_000;

/** A reading is inside its limits when each of its raw values is. */
const isInside = ({ values, least, most }: Recorded['readings'][number]): boolean =>
	values.length > 0 &&
	values.every((value) => (least === null || value >= least) && (most === null || value <= most));

function ifWrongTime(
	state: State,
	{ person, competency, takenAt }: RecordPractical,
	now: string
): Refused | null {
	if (takenAt > now) return refuse('in-the-future', 'takenAt');
	const start = state.training.get(trainingKey(person, competency))?.at;
	return !start || takenAt < start ? refuse('backdated', 'takenAt') : null;
}

/**
 * A supervisor enters hands-on work that they watched themselves, with the raw readings. It cannot be accepted
 * while a gate was not met or not seen; a reading outside its limits can, with a reason that is printed.
 */
export function recordPractical(state: State, wish: RecordPractical, acting: Acting): Decision {
	const { person, competency, witness, takenAt, gates, readings, result, reason } = wish;
	const refused =
		unlessRole(state, acting, 'supervisor') ?? unlessPerson(state, person) ?? ifOwn(person, acting);
	if (refused) return refused;
	if (!isCompetency(competency)) return refuse('unknown-competency', 'competency');
	if (witness !== acting.actor) return refuse('not-witnessed', 'witness');
	if (state.practicals.has(wish.practical)) return refuse('id-taken', 'practical');
	const early = unlessAuthorised(state, acting, person, competency) ?? ifWrongTime(state, wish, acting.now);
	if (early) return early;

	const judged = readings.map((reading) => ({ ...reading, accepted: isInside(reading) }));
	const outside = result === 'accepted' ? judged.filter(({ accepted }) => !accepted) : [];
	const what = outside.map(({ reading }) => reading);
	if (result === 'accepted') {
		const open = gates.filter(({ seen }) => seen !== 'met');
		if (gates.length === 0 || open.length > 0)
			return refuse(
				'gate-not-met',
				'gates',
				open.map(({ gate }) => gate)
			);
		if (readings.length === 0) return refuse('malformed', 'readings', ['none']);
	}
	const unreasoned = unlessReasoned(what, reason);
	if (unreasoned) return unreasoned;
	const late = Date.parse(acting.now) - Date.parse(takenAt) > DAY_MS;
	const { practical, sheet, panels, instruments, note } = wish;
	return accept({
		event: 'practical.recorded',
		data: {
			practical,
			person,
			competency,
			witness,
			takenAt,
			late,
			sheet,
			panels,
			instruments,
			gates,
			readings: judged,
			result,
			override: overriding(what, reason),
			note
		}
	});
}

import type { CompetencyId } from '$lib/learning';
import {
	addSecondPerson,
	confirmContinuity,
	dayOf,
	mayAct,
	recordPractical,
	reinstateSignOff,
	signOffOf,
	startTraining,
	suspendSignOff,
	withdrawSignOff,
	type Acting,
	type StartTraining,
	type State
} from '$lib/records';
import { UNDECLARED, UNWRITTEN } from './unwritten';

/** Acts on a signature, each a signed one itself. */
export const CHANGES = {
	suspend: suspendSignOff,
	reinstate: reinstateSignOff,
	withdraw: withdrawSignOff
} as const;
export type Change = keyof typeof CHANGES;

export const STARTS: readonly StartTraining['how'][] = [
	'start-training',
	'recertify',
	'start-over',
	'new-application'
];

/** Whether the record would take a practical of this person from this witness now. */
export const mayRecordPractical = (state: State, acting: Acting, person: string, competency: CompetencyId) =>
	recordPractical(
		state,
		{
			practical: 'asked',
			person,
			competency,
			witness: acting.actor,
			takenAt: acting.now,
			sheet: { sheet: 'asked', revision: 1, hash: UNWRITTEN.hash },
			panels: [],
			instruments: [],
			gates: [],
			readings: [],
			result: 'refused',
			note: null,
			reason: null
		},
		acting
	);

/** In which ways somebody could be admitted to training in an area now. */
export const offeredStarts = (state: State, acting: Acting, person: string, area: string) =>
	STARTS.filter((how) => startTraining(state, { person, area, how }, acting).ok);

/** What the viewer may do in one competency of a person, found out by asking the record's own commands. */
export function offeredActs(state: State, acting: Acting, person: string, competency: CompetencyId) {
	const signOff = signOffOf(state, person, competency)?.signOff ?? '';
	const reason = UNWRITTEN;
	const acts = {
		/** Whether the viewer may look at the drill log and the signing page at all. */
		look: acting.actor !== person && mayAct(state, acting.actor, 'supervisor', acting.now),
		practical: mayRecordPractical(state, acting, person, competency).ok,
		continuity: confirmContinuity(
			state,
			{ signOff, jobs: [{ job: 'asked', on: dayOf(state, acting.now) }] },
			acting
		).ok,
		second: addSecondPerson(state, { signOff, conflict: UNDECLARED }, acting).ok,
		changes: (Object.keys(CHANGES) as Change[]).filter(
			(change) => CHANGES[change](state, { signOff, reason }, acting).ok
		),
		starts: offeredStarts(state, acting, person, competency)
	};
	return { ...acts, any: Object.values(acts).some((act) => (Array.isArray(act) ? act.length > 0 : act)) };
}

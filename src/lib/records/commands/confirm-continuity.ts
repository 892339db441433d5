import { addMonths, transition, type Standing } from '$lib/learning';
import { accept, refuse, type Acting, type Decision, type Refused } from '../decision';
import type { EventData } from '../event';
import { dayOf } from '../standing/calendar-day';
import { certification } from '../standing/certification';
import { schemeAt, type SchemeInForce } from '../standing/scheme';
import type { State } from '../state';
import { unlessAuthorised } from './authorised';
import { competencyOf, unlessPerson, unlessRole } from './guards';

export interface ConfirmContinuity {
	readonly signOff: string;
	/** Jobs in this competency that the person did, with their days: at least one. */
	readonly jobs: { readonly job: string; readonly on: string }[];
}

type How = EventData<'continuity.confirmed'>['how'];

/** Which arrow a confirmation takes today: in time, late, or so late that it needs a new practical. */
function howFor(standing: Standing, today: string, limits: SchemeInForce['limits']): How | null {
	const ways: How[] = ['confirm-continuity', 'confirm-late', 'requalify'];
	const by = { by: 'supervisor', today, scheme: limits } as const;
	return ways.find((how) => transition(standing, how, by).ok) ?? null;
}

function ifOutsidePeriod(jobs: ConfirmContinuity['jobs'], today: string, months: number): Refused | null {
	if (jobs.length === 0) return refuse('no-jobs', 'jobs');
	const outside = jobs.filter(({ on }) => on > today || on < addMonths(today, -months)).map(({ job }) => job);
	return outside.length > 0 ? refuse('job-out-of-period', 'jobs', outside) : null;
}

/** A supervisor confirms that a signed person still does this work, by the jobs they did. */
export function confirmContinuity(state: State, wish: ConfirmContinuity, acting: Acting): Decision {
	const signed = state.signOffs.byId.get(wish.signOff);
	if (!signed) return refuse('unknown-sign-off', 'signOff');
	const { person } = signed;
	const competency = competencyOf(signed);
	const refused = unlessRole(state, acting, 'supervisor') ?? unlessPerson(state, person);
	if (refused) return refused;
	const scheme = schemeAt(state, acting.now);
	const { months } = scheme.limits.continuity;
	const today = dayOf(state, acting.now);
	const { standing, signOff: latest } = certification(state, person, competency, acting);
	if (latest?.signOff !== wish.signOff) return refuse('wrong-state', 'signOff', ['superseded']);

	const against =
		unlessAuthorised(state, acting, person, competency) ?? ifOutsidePeriod(wish.jobs, today, months);
	if (against) return against;
	const how = howFor(standing, today, scheme.limits);
	if (!how) return refuse('wrong-state', 'signOff', [standing.state]);
	const practical = [...state.practicals.values()].findLast(
		(each) => each.person === person && each.competency === competency && each.result === 'accepted'
	);
	const since =
		practical && dayOf(state, practical.takenAt) > (standing.since ?? '') ? practical.practical : null;
	if (how === 'requalify' && !since) return refuse('practical-missing', 'signOff');
	return accept({
		event: 'continuity.confirmed',
		data: {
			signOff: wish.signOff,
			person,
			jobs: wish.jobs,
			how,
			practical: how === 'requalify' ? since : null,
			continuityDue: addMonths(today, months)
		}
	});
}

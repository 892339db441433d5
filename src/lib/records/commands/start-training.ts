import { transition } from '$lib/learning';
import { accept, refuse, type Acting, type Decision } from '../decision';
import type { EventData } from '../event';
import { dayOf } from '../standing/calendar-day';
import { certification } from '../standing/certification';
import { mayAct } from '../standing/roles';
import { safetyStanding } from '../standing/safety';
import { schemeAt } from '../standing/scheme';
import type { State } from '../state';
import { ifOwn, isCompetency, unlessPerson, unlessRole } from './guards';
import { provingHistory } from './proving-history';

export interface StartTraining {
	readonly person: string;
	/** A competency, or `safety` for a gate whose tries are used up. */
	readonly area: string;
	readonly how: EventData<'training.started'>['how'];
}

/** Admits somebody to training in one area again: after an expiry, a withdrawal, or when all tries are used up. */
export function startTraining(state: State, wish: StartTraining, acting: Acting): Decision {
	const refused =
		unlessRole(state, acting, 'supervisor') ?? unlessPerson(state, wish.person) ?? ifOwn(wish.person, acting);
	if (refused) return refused;
	const { person, area, how } = wish;
	const scheme = schemeAt(state, acting.now);
	const started = accept({ event: 'training.started', data: { person, areas: [area], how } });
	const isLead = mayAct(state, acting.actor, 'lead', acting.now);
	const today = dayOf(state, acting.now);

	if (area === 'safety') {
		if (how !== 'new-application' || safetyStanding(state, person, scheme.limits.safety).state !== 'closed')
			return refuse('wrong-state', 'area');
		return isLead ? started : refuse('not-allowed', 'actor');
	}
	if (!isCompetency(area)) return refuse('unknown-competency', 'area');

	const tries = provingHistory(state, person, area, scheme.limits, acting);
	if (how === 'new-application' && !tries.may && tries.waitsFor.includes('new-application')) {
		if (!isLead) return refuse('not-allowed', 'actor');
		return today < tries.from ? refuse('retest-too-early', 'area', [tries.from]) : started;
	}
	const { standing } = certification(state, person, area, acting);
	const arrow = transition(standing, how, {
		by: isLead ? 'lead' : 'supervisor',
		today,
		scheme: scheme.limits
	});
	if (arrow.ok) return started;
	return arrow.refused === 'not-for-this-role'
		? refuse('not-allowed', 'actor')
		: refuse('wrong-state', 'how', [arrow.refused]);
}

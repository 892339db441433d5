import { addDays, transition } from '$lib/learning';
import { accept, refuse, type Acting, type Decision } from '../decision';
import type { JournalEvent } from '../event';
import type { SignOff } from '../folds/sign-offs';
import type { TextRef } from '../shapes';
import { dayOf } from '../standing/calendar-day';
import { certification } from '../standing/certification';
import { mayAct } from '../standing/roles';
import { schemeAt } from '../standing/scheme';
import type { State } from '../state';
import { ifOwn, competencyOf, unlessPerson, unlessRole } from './guards';

export interface ChangeSignOff {
	readonly signOff: string;
	readonly reason: TextRef;
}

/** A suspension is looked at again within this many days, so that it cannot stand for good unexamined. */
export const REVIEW_DAYS = 5;

/** Suspending, lifting and withdrawing: acts of a lead, never of the program, and never about oneself. */
function change(
	act: 'suspend' | 'reinstate' | 'withdraw',
	eventOf: (signed: SignOff, reason: TextRef, today: string) => JournalEvent
) {
	return (state: State, { signOff, reason }: ChangeSignOff, acting: Acting): Decision => {
		const signed = state.signOffs.byId.get(signOff);
		if (!signed) return refuse('unknown-sign-off', 'signOff');
		const { person } = signed;
		const competency = competencyOf(signed);
		const refused =
			unlessRole(state, acting, 'supervisor') ?? unlessPerson(state, person) ?? ifOwn(person, acting);
		if (refused) return refused;
		const scheme = schemeAt(state, acting.now);
		const { standing, signOff: latest } = certification(state, person, competency, acting);
		if (latest?.signOff !== signOff) return refuse('wrong-state', 'signOff', ['superseded']);

		const today = dayOf(state, acting.now);
		const by = mayAct(state, acting.actor, 'lead', acting.now) ? 'lead' : 'supervisor';
		const arrow = transition(standing, act, { by, today, scheme: scheme.limits });
		if (arrow.ok) return accept(eventOf(signed, reason, today));
		if (arrow.refused === 'not-for-this-role') return refuse('not-allowed', 'actor');
		return refuse('wrong-state', 'signOff', [standing.state]);
	};
}

export const suspendSignOff = change('suspend', ({ signOff, person }, reason, today) => ({
	event: 'signoff.suspended',
	data: { signOff, person, reason, reviewBy: addDays(today, REVIEW_DAYS) }
}));

export const reinstateSignOff = change('reinstate', ({ signOff, person }, reason) => ({
	event: 'signoff.reinstated',
	data: { signOff, person, reason }
}));

export const withdrawSignOff = change('withdraw', ({ signOff, person }, reason) => ({
	event: 'signoff.withdrawn',
	data: { signOff, person, reason }
}));

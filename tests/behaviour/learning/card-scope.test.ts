import { expect, it } from 'vitest';
import { cardScope, certificationStates, workAllowed, type CertificationState } from '$lib/learning';

const states = Object.keys(certificationStates) as CertificationState[];
const given = (state: CertificationState) => cardScope(state, false);

it('gives settings only to whoever was signed for, and work alone only while that holds', () => {
	expect(states.filter((state) => given(state) === 'alone')).toEqual(['signed']);
	expect(states.filter((state) => given(state) === 'supervised')).toEqual(['continuity-lapsed', 'expired']);
});

it('never gives more than the work that is allowed', () => {
	const order = ['none', 'supervised', 'alone'];
	for (const state of states)
		for (const due of [true, false])
			expect(order.indexOf(cardScope(state, due)), state).toBeLessThanOrEqual(
				order.indexOf(workAllowed(state, due))
			);
	expect(cardScope('signed', true)).toBe('supervised');
});

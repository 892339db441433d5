import { expect, it } from 'vitest';
import { certificationStates, workAllowed, type CertificationState } from '$lib/learning';

const states = Object.keys(certificationStates) as CertificationState[];

it('lets nobody work alone but whoever is signed and has nothing to refresh', () => {
	expect(states.filter((state) => workAllowed(state, false) === 'alone')).toEqual(['signed']);
	expect(states.filter((state) => workAllowed(state, true) === 'alone')).toEqual([]);
});

it('takes no more than working alone from somebody with a refresher due', () => {
	expect(workAllowed('signed', true)).toBe('supervised');
	for (const state of states.filter((each) => each !== 'signed'))
		expect(workAllowed(state, true), state).toBe(workAllowed(state, false));
});

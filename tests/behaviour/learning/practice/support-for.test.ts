import { expect, it } from 'vitest';
import { estimate, supportFor } from '$lib/learning';
import { practised } from './practised';

const jobs = (...right: boolean[]) => estimate(right.map((one) => practised('C7', one)));

it.each([
	['worked', jobs(), 0.8, 0],
	['worked', jobs(), 0.8, 1],
	['half', jobs(), 0.8, 2],
	['half', jobs(true), 0.9, 2],
	['full', jobs(true, false), 0.5, 2],
	// too few jobs to believe in
	['worked', jobs(true), 0.95, 0],
	// examples only hinder whoever can do it
	['full', jobs(true, true), 0.8, 0],
	['worked', jobs(true, true), 0.79, 0]
] as const)('is %s', (support, state, expected, workedSeen) => {
	expect(supportFor(state, 'C7', expected, workedSeen)).toBe(support);
});

it('counts the jobs of that skill only', () => {
	expect(supportFor(jobs(true, true), 'C8', 0.9, 2)).toBe('half');
});

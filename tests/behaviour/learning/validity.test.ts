import { describe, expect, it } from 'vitest';
import {
	arrows,
	defaultScheme,
	stateOn,
	validity,
	type CertificationState,
	type Standing
} from '$lib/learning';

const signed = { on: '2026-08-31', evaluatedOn: '2026-08-31', confirmedOn: null, holdsSafetySkill: false };

describe('the dates of a sign-off', () => {
	it('are 24, 6 and 36 months, the shortest month clamped', () =>
		expect(validity(defaultScheme, signed)).toEqual({
			validUntil: '2028-08-31',
			continuityDue: '2027-02-28',
			reevaluationDue: '2029-08-31',
			next: { on: '2027-02-28', what: 'continuity' }
		}));

	it('are 12 months where the competency holds a safety skill', () =>
		expect(validity(defaultScheme, { ...signed, holdsSafetySkill: true }).validUntil).toBe('2027-08-31'));

	it('move on with a confirmation, the end of validity does not', () => {
		const confirmed = validity(defaultScheme, { ...signed, confirmedOn: '2028-06-15' });
		expect(confirmed.continuityDue).toBe('2028-12-15');
		expect(confirmed.validUntil).toBe('2028-08-31');
		expect(confirmed.next).toEqual({ on: '2028-08-31', what: 'renewal' });
	});

	it('do not move back with a confirmation older than the signature', () =>
		expect(validity(defaultScheme, { ...signed, confirmedOn: '2026-03-01' }).continuityDue).toBe(
			'2027-02-28'
		));

	it('end with the full re-evaluation when a renewal would reach beyond it', () => {
		const renewed = validity(defaultScheme, {
			...signed,
			on: '2028-08-01',
			confirmedOn: '2029-07-01'
		});
		expect(renewed.validUntil).toBe('2029-08-31');
		expect(renewed.next).toEqual({ on: '2029-08-31', what: 'reevaluation' });
	});

	it('name the greater task when dates meet', () => {
		const scheme = {
			validity: { months: 6, monthsWithSafety: 6, reevaluationMonths: 6 },
			continuity: { months: 6, lateDays: 30 }
		};
		expect(validity(scheme, signed).next.what).toBe('reevaluation');
	});

	it('follow the scheme', () => {
		const scheme = { ...defaultScheme, continuity: { months: 3, lateDays: 30 } };
		expect(validity(scheme, signed).continuityDue).toBe('2026-11-30');
	});
});

describe('the state on a day', () => {
	const dates = validity(defaultScheme, signed);
	const on = (state: CertificationState, today: string, evidenceComplete = false) =>
		stateOn({ state, since: '2026-08-31' }, { evidenceComplete, validity: dates }, today);

	it.each([
		['signed', '2027-02-28', 'signed'],
		['signed', '2027-03-01', 'continuity-lapsed'],
		['signed', '2028-09-01', 'expired'],
		['suspended', '2027-03-01', 'suspended'],
		['suspended', '2028-08-31', 'suspended'],
		['suspended', '2028-09-01', 'expired'],
		['continuity-lapsed', '2028-09-01', 'expired'],
		['withdrawn', '2028-09-01', 'withdrawn'],
		['none', '2028-09-01', 'none']
	] as const)('%s, on %s, is %s', (decided, today, state) => expect(on(decided, today).state).toBe(state));

	it('counts from the last good day', () => {
		expect(on('signed', '2027-03-20').since).toBe('2027-02-28');
		expect(on('signed', '2028-12-01').since).toBe('2028-08-31');
	});

	it('makes eligible when the evidence is complete, and not before', () => {
		expect(on('in-training', '2026-09-01', true).state).toBe('eligible');
		expect(on('in-training', '2026-09-01', false).state).toBe('in-training');
		expect(on('none', '2026-09-01', true).state).toBe('none');
	});

	it('moves only along arrows that belong to the scheme', () => {
		for (const state of [
			'none',
			'in-training',
			'eligible',
			'signed',
			'suspended',
			'continuity-lapsed',
			'expired',
			'withdrawn'
		] as const)
			for (const today of ['2026-09-01', '2027-03-01', '2028-09-01', '2040-01-01'])
				for (const complete of [true, false]) {
					const reached = on(state, today, complete).state;
					if (reached === state) continue;
					expect(arrows).toContainEqual(
						expect.objectContaining({ from: state, to: reached, by: ['scheme'] })
					);
				}
	});

	it('leaves a state without dates alone', () => {
		const decided: Standing = { state: 'signed', since: '2026-08-31' };
		expect(stateOn(decided, { evidenceComplete: false, validity: null }, '2040-01-01')).toEqual(decided);
	});
});

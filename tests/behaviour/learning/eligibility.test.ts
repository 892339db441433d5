import { describe, expect, it } from 'vitest';
import { eligibility, type CertificationState, type Evidence, type Signer } from '$lib/learning';

const evidence: Evidence = { lessonsDone: true, verdict: 'passed', safety: 'passed', practical: 'accepted' };
const person = { id: 'p-1', state: 'eligible' as CertificationState, evidence };
const signer: Signer = {
	id: 'p-2',
	state: 'signed',
	foundingLead: false,
	trainedThePerson: false,
	conflictDeclared: true
};
const withEvidence = (change: Partial<Evidence>) =>
	eligibility({ ...person, evidence: { ...evidence, ...change } }, signer);
const withSigner = (change: Partial<Signer>) => eligibility(person, { ...signer, ...change });

describe('may this be signed', () => {
	it('yes, with everything there', () =>
		expect(eligibility(person, signer)).toEqual({ may: true, missing: [], flags: [] }));

	it.each([
		[{ lessonsDone: false }, 'lessons'],
		[{ verdict: 'open' }, 'verdict'],
		[{ verdict: 'failed' }, 'verdict'],
		[{ verdict: 'undecided' }, 'verdict'],
		[{ safety: 'open' }, 'safety-gate'],
		[{ safety: 'stopped' }, 'safety-gate'],
		[{ safety: 'closed' }, 'safety-gate'],
		[{ practical: 'none' }, 'practical'],
		[{ practical: 'refused' }, 'practical']
	] as const)('no, with %o', (change, gap) =>
		expect(withEvidence(change)).toMatchObject({ may: false, missing: [gap] })
	);

	it('names everything that is missing at once, in working order', () =>
		expect(
			eligibility(
				{
					id: 'p-2',
					state: 'withdrawn',
					evidence: { lessonsDone: false, verdict: 'open', safety: 'open', practical: 'none' }
				},
				{ ...signer, state: 'none', conflictDeclared: false }
			).missing
		).toEqual([
			'lessons',
			'verdict',
			'safety-gate',
			'practical',
			'state',
			'own-record',
			'signer-not-signed',
			'conflict-declaration'
		]));

	it('never the own record, not even for the founding lead', () =>
		expect(withSigner({ id: 'p-1', state: 'none', foundingLead: true })).toMatchObject({
			may: false,
			missing: ['own-record']
		}));

	it.each(['none', 'suspended', 'continuity-lapsed', 'expired', 'withdrawn'] as const)(
		'not while the state is %s',
		(state) => expect(eligibility({ ...person, state }, signer).missing).toEqual(['state'])
	);

	it.each(['in-training', 'eligible', 'signed'] as const)('while the state is %s', (state) =>
		expect(eligibility({ ...person, state }, signer).may).toBe(true)
	);

	it('not before the conflict declaration', () =>
		expect(withSigner({ conflictDeclared: false }).missing).toEqual(['conflict-declaration']));
});

describe('the signer', () => {
	it.each([
		['none', 'signer-not-signed'],
		['in-training', 'signer-not-signed'],
		['eligible', 'signer-not-signed'],
		['withdrawn', 'signer-not-signed'],
		['suspended', 'signer-suspended'],
		['expired', 'signer-authorisation-expired'],
		['continuity-lapsed', 'signer-authorisation-expired']
	] as const)('who is %s may not', (state, gap) => expect(withSigner({ state }).missing).toEqual([gap]));

	it.each(['none', 'in-training', 'eligible'] as const)('as founding lead may while %s, flagged', (state) =>
		expect(withSigner({ state, foundingLead: true })).toEqual({
			may: true,
			missing: [],
			flags: ['founding-lead']
		})
	);

	it.each(['suspended', 'expired', 'continuity-lapsed', 'withdrawn'] as const)(
		'as founding lead whose own sign-off is %s may not',
		(state) => expect(withSigner({ state, foundingLead: true }).may).toBe(false)
	);

	it('as founding lead with a sign-off of their own is not flagged', () =>
		expect(withSigner({ foundingLead: true }).flags).toEqual([]));

	it('who trained the person may, flagged', () =>
		expect(withSigner({ trainedThePerson: true })).toEqual({
			may: true,
			missing: [],
			flags: ['non-independent']
		}));
});

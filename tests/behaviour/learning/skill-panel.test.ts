import { describe, expect, it } from 'vitest';
import { defaultScheme, skillPanel, validity, type PanelEvidence } from '$lib/learning';

const none: PanelEvidence = { lessonsDone: false, proven: false, practicalAccepted: false, signedOff: false };
const all: PanelEvidence = { lessonsDone: true, proven: true, practicalAccepted: true, signedOff: true };
const dates = validity(defaultScheme, {
	on: '2026-11-02',
	evaluatedOn: '2026-11-02',
	confirmedOn: null,
	holdsSafetySkill: false
});
const training = { state: 'in-training', since: '2026-10-01' } as const;

describe('the finish', () => {
	it.each([
		['bare', none],
		['prepared', { ...none, lessonsDone: true }],
		['coated', { ...none, lessonsDone: true, proven: true }],
		['cured', { ...all, signedOff: false }],
		['signed', all]
	] as const)('%s', (finish, evidence) =>
		expect(skillPanel(evidence, { state: 'signed', since: '2026-11-02' }, dates).finish).toBe(finish)
	);

	it('shows a later step only on top of the earlier ones', () => {
		expect(skillPanel({ ...none, proven: true, practicalAccepted: true }, training, null).finish).toBe(
			'bare'
		);
		expect(skillPanel({ ...none, lessonsDone: true, practicalAccepted: true }, training, null).finish).toBe(
			'prepared'
		);
	});
});

describe('the strip', () => {
	it('is not there before the first signature', () =>
		expect(skillPanel({ ...all, signedOff: false }, training, null).strip).toBeNull());

	it('says until when it is signed: the earliest date', () =>
		expect(skillPanel(all, { state: 'signed', since: '2026-11-02' }, dates).strip).toEqual({
			state: 'signed',
			word: { en: 'signed', es: 'firmada' },
			date: '2027-05-02',
			dateIs: 'until'
		}));

	it.each([
		['continuity-lapsed', 'until'],
		['expired', 'until'],
		['suspended', 'since'],
		['withdrawn', 'since'],
		['in-training', 'since']
	] as const)('%s: the panel stays drawn as signed, with the date %s', (state, dateIs) => {
		const panel = skillPanel(all, { state, since: '2027-05-02' }, dates);
		expect(panel.finish).toBe('signed');
		expect(panel.strip).toMatchObject({ state, date: '2027-05-02', dateIs });
	});

	it('refuses to be drawn without a date', () => {
		expect(() => skillPanel(all, { state: 'signed', since: '2026-11-02' }, null)).toThrow();
		expect(() => skillPanel(all, { state: 'expired', since: null }, dates)).toThrow();
	});
});

import { describe, expect, test } from 'vitest';
import { shell, skillPanel, terms } from '$lib/i18n';

/** Words of the trade, of open standards and of regulation, as screens may name things. */
const TRADE = [
	'Intake',
	'Preparation',
	'Mixing',
	'Spraying',
	'Curing',
	'Inspection',
	'Safety',
	'trainee',
	'supervisor',
	'lead',
	'auditor',
	'Bare',
	'Prepared',
	'Coated',
	'Cured',
	'Signed',
	'Signed off',
	'Suspended',
	'Withdrawn',
	'Expired',
	'Refresher due',
	'Safety stop',
	'Quality',
	'Job ticket',
	'Data sheet',
	'Shop values',
	'Set-up sheet',
	'Skill panel',
	'Practical',
	'Sign-off',
	'Refresher',
	'Findings',
	'Practice drill',
	'Proving drill',
	'Lessons',
	'Practice',
	'Proving',
	'Rules',
	'Crew board',
	'Incidents',
	'Record',
	'Shop',
	'Today',
	'practical accepted',
	'signed off'
];

/** Labels that are neither, each with the reason it is plain words and nobody's. */
const REASONS: Readonly<Record<string, string>> = {
	'lessons still open': 'says in words what the bare coupon draws',
	'lessons done': 'says in words what the prepared coupon draws',
	'proven in drills': 'says in words what the coated coupon draws',
	'In training again': 'what the person is in until there is a signature',
	'Ready to be signed': 'all parts are there and nobody has signed yet',
	'Continuity lapsed': 'continuity is the word of welder and tester standards',
	'Bench card': 'the plan of one job, printed to lie on the bench',
	Cost: 'third severity: nobody hurt, nothing spoilt, money lost',
	'In the window': 'window is the trade’s word for a permitted range',
	'Amber: just outside': 'amber as on a traffic signal, said in words too',
	'Outside the window': 'window is the trade’s word for a permitted range'
};

const labels = (of: unknown): string[] =>
	typeof of === 'string' ? [of] : of && typeof of === 'object' ? Object.values(of).flatMap(labels) : [];

describe('labels that screens share', () => {
	const shared = [...labels(terms.en), ...labels(skillPanel.en), ...labels(shell.en.screen)];

	test('are words of the trade, or have a reason', () => {
		expect(shared.length).toBeGreaterThan(40);
		expect(shared.filter((label) => !TRADE.includes(label) && !REASONS[label])).toEqual([]);
	});

	test('reasons are given only for labels there are', () => {
		expect(Object.keys(REASONS).filter((label) => !shared.includes(label))).toEqual([]);
	});
});

import { describe, expect, it } from 'vitest';
import {
	arrows,
	certificationStates,
	defaultScheme,
	transition,
	type Act,
	type Actor,
	type CertificationState
} from '$lib/learning';

const states = Object.keys(certificationStates) as CertificationState[];
const actors: Actor[] = ['scheme', 'supervisor', 'lead'];

/** The machine as it is meant, written down a second time by hand: from, act, to, who, days since that are fine. */
const meant: [CertificationState, Act, CertificationState, Actor[], number][] = [
	['none', 'start-training', 'in-training', ['supervisor', 'lead'], 0],
	['in-training', 'complete-evidence', 'eligible', ['scheme'], 0],
	['eligible', 'sign', 'signed', ['supervisor', 'lead'], 0],
	['signed', 'confirm-continuity', 'signed', ['supervisor', 'lead'], 0],
	['signed', 'sign-again', 'signed', ['supervisor', 'lead'], 0],
	['signed', 'suspend', 'suspended', ['lead'], 0],
	['signed', 'withdraw', 'withdrawn', ['lead'], 0],
	['signed', 'lapse', 'continuity-lapsed', ['scheme'], 0],
	['signed', 'expire', 'expired', ['scheme'], 0],
	['suspended', 'reinstate', 'signed', ['lead'], 0],
	['suspended', 'withdraw', 'withdrawn', ['lead'], 0],
	['suspended', 'expire', 'expired', ['scheme'], 0],
	['continuity-lapsed', 'confirm-late', 'signed', ['supervisor', 'lead'], 30],
	['continuity-lapsed', 'requalify', 'signed', ['supervisor', 'lead'], 31],
	['continuity-lapsed', 'withdraw', 'withdrawn', ['lead'], 0],
	['continuity-lapsed', 'expire', 'expired', ['scheme'], 0],
	['expired', 'recertify', 'in-training', ['supervisor', 'lead'], 365],
	['expired', 'start-over', 'in-training', ['supervisor', 'lead'], 366],
	['withdrawn', 'new-application', 'in-training', ['lead'], 0]
];

const acts = [...new Set(meant.map(([, act]) => act))];
const since = '2026-01-01';
const after = (days: number) => new Date(Date.UTC(2026, 0, 1 + days)).toISOString().slice(0, 10);
const attempt = (state: CertificationState, act: Act, by: Actor, days: number) =>
	transition({ state, since }, act, { by, today: after(days), scheme: defaultScheme });

describe('every arrow', () => {
	it.each(meant)('%s: %s leads to %s', (from, act, to, by, days) => {
		for (const actor of by) expect(attempt(from, act, actor, days)).toEqual({ ok: true, to });
	});

	it.each(meant)('%s: %s is refused to anybody else', (from, act, _to, by, days) => {
		for (const actor of actors.filter((actor) => !by.includes(actor)))
			expect(attempt(from, act, actor, days)).toEqual({ ok: false, refused: 'not-for-this-role' });
	});

	it('is listed once', () => {
		expect(arrows).toHaveLength(meant.length);
		expect(new Set(arrows.map(({ from, act }) => `${from} ${act}`)).size).toBe(arrows.length);
	});
});

describe('everything else is refused', () => {
	const rest = states.flatMap((state) =>
		acts
			.filter((act) => !meant.some((arrow) => arrow[0] === state && arrow[1] === act))
			.map((act) => ({ state, act }))
	);

	it('is most of what one could try', () =>
		expect(rest).toHaveLength(states.length * acts.length - meant.length));

	it.each(rest)('$state: $act', ({ state, act }) => {
		for (const actor of actors)
			for (const days of [0, 31, 400])
				expect(attempt(state, act, actor, days)).toEqual({ ok: false, refused: 'no-such-arrow' });
	});
});

describe('windows of time', () => {
	it.each([
		['continuity-lapsed', 'confirm-late', 31],
		['continuity-lapsed', 'requalify', 30],
		['expired', 'recertify', 366],
		['expired', 'start-over', 365]
	] as const)('%s: %s is refused after %i days', (state, act, days) =>
		expect(attempt(state, act, 'lead', days)).toEqual({ ok: false, refused: 'outside-window' })
	);

	it('leave exactly one way back on any day', () => {
		for (let days = 0; days < 800; days += 1) {
			const open = (state: CertificationState, pair: Act[]) =>
				pair.filter((act) => attempt(state, act, 'lead', days).ok);
			expect(open('continuity-lapsed', ['confirm-late', 'requalify'])).toHaveLength(1);
			expect(open('expired', ['recertify', 'start-over'])).toHaveLength(1);
		}
	});

	it('need the day the state began', () =>
		expect(() =>
			transition({ state: 'expired', since: null }, 'recertify', {
				by: 'lead',
				today: since,
				scheme: defaultScheme
			})
		).toThrow());
});

describe('principles', () => {
	it('only a named person leads to signed', () => {
		for (const arrow of arrows) if (arrow.to === 'signed') expect(arrow.by).not.toContain('scheme');
	});

	it('the program suspends and withdraws nobody', () => {
		for (const arrow of arrows)
			if (arrow.to === 'suspended' || arrow.to === 'withdrawn') expect(arrow.by).toEqual(['lead']);
	});

	it('a withdrawn competency is signed again only by way of a new application', () =>
		expect(arrows.filter(({ from }) => from === 'withdrawn').map(({ act }) => act)).toEqual([
			'new-application'
		]));
});

import { expect, test } from 'vitest';
import { celsius, DEMO_SHEETS, diagnose, minutes, type Answers, type Second, type Shop } from '$lib/engine';
import { readConditions, type Conditions } from '$lib/server/incidents/conditions';
import { likelyCauses } from '$lib/server/incidents/likely-causes';

const shop: Shop = {
	on: '2026-03-02',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const sheet = DEMO_SHEETS.find(({ parts }) => parts === 2)!;
const nothing: Conditions = readConditions({});
const flash = (value: Second): Answers => ({
	'flash-time': { kind: 'quantity', value, typed: 'as written' }
});
const of = (known: Partial<Conditions>, rule = 'flash-time', tests = {}) =>
	likelyCauses('solvent-pop', { ...nothing, ...known }, tests, shop).find((cause) => cause.rule === rule);

test('leaves no cause out and adds none, whatever is known', () => {
	const keys = (causes: readonly { rule: string; direction: string }[]) =>
		causes.map(({ rule, direction }) => `${rule} ${direction}`).sort();
	const known = { ...nothing, coating: sheet.id, written: flash(minutes(1)) };
	expect(keys(likelyCauses('solvent-pop', known, {}, shop))).toEqual(keys(diagnose('solvent-pop')));
});

test('finds a line that breaks the limit of the coating that was used, and puts it first', () => {
	const known = { coating: sheet.id, written: flash(minutes(0.1)) };
	expect(of(known)?.fit).toBe('recorded');
	expect(likelyCauses('solvent-pop', { ...nothing, ...known }, {}, shop)[0]?.rule).toBe('flash-time');
});

test('concludes nothing from a line whose limit differs with a coating nobody knows', () => {
	const windows = DEMO_SHEETS.flatMap(({ id }) => {
		const recorded = of({ coating: id, written: flash(minutes(6)) })?.recorded;
		return recorded ? [JSON.stringify(recorded.expected)] : [];
	});
	expect(new Set(windows).size).toBeGreaterThan(1);
	expect(of({ written: flash(minutes(6)) })?.recorded).toBeNull();
});

test('does not take an example day for the day of the job', () => {
	const part = 'surface-above-dew-point';
	const causes = (known: Partial<Conditions>) =>
		likelyCauses('blushing', { ...nothing, coating: sheet.id, ...known }, {}, shop);
	const fit = (known: Partial<Conditions>) => causes(known).find(({ rule }) => rule === part)?.fit;
	expect(fit({})).toBe('unknown');
	expect(fit({ air: celsius(25), humidity: 0.9, part: celsius(22) })).toBe('recorded');
});

test('a test of the cause itself stands above every record', () => {
	const known = { coating: sheet.id, written: flash(minutes(0.1)) };
	expect(of(known, 'flash-time', { 'flash-time': 'kept' })?.fit).toBe('excluded');
	expect(of({}, 'flash-time', { 'flash-time': 'low' })?.fit).toBe('shown');
});

test('a shop without sheets still gets every cause', () => {
	const bare = { ...shop, sheets: {} };
	expect(likelyCauses('solvent-pop', nothing, {}, bare).map(({ fit }) => fit)).toEqual(
		diagnose('solvent-pop').map(() => 'unknown')
	);
});

import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import {
	foldEntries,
	reportIncident,
	decideIncident,
	signOff,
	suspendSignOff,
	type Entry
} from '$lib/records';
import { applyEntry } from '$lib/records/state';
import { testShop, words, type TestShop } from './test-shop';
import { makeReady, makeSigned, openRun, signature, workThrough } from './working-towards';

function freeze<T>(value: T): T {
	if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
		Object.freeze(value);
		for (const inner of Object.values(value)) freeze(inner);
	}
	return value;
}

describe('the state', () => {
	let shop: TestShop;
	let entries: readonly Entry[];

	beforeAll(async () => {
		shop = await testShop();
		const id = await makeSigned(shop, 'sup-1', 'mixing');
		await makeReady(shop, 'trn-1', 'mixing', 'sup-1');
		await shop.do(signOff, signature(shop, 'trn-1', 'mixing'), 'sup-1');
		const incident = {
			incident: 'inc-1',
			defect: 'pop',
			job: 'WO-1',
			person: 'trn-1',
			conditions: {},
			note: null
		};
		await shop.do(reportIncident, incident, 'sup-1');
		const gap = { incident: 'inc-1', evidence: words('t-e'), cause: 'skill-gap' as const };
		await shop.do(decideIncident, { ...gap, competency: 'mixing', rules: ['mix.ratio'] }, 'sup-1');
		await workThrough(shop, 'trn-1', await openRun(shop, 'trn-1', 'mixing', 'inc-1'), true, ['mix.ratio']);
		await shop.do(suspendSignOff, { signOff: id, reason: words('t-r') }, 'lead-1');
		entries = shop.journal.entries.map((entry) => structuredClone(entry));
		freeze(entries);
	});

	test('is the same built up act by act, folded at once, and folded in two parts', () => {
		expect(entries.length).toBeGreaterThan(150);
		expect(foldEntries(entries)).toEqual(shop.state);
		fc.assert(
			fc.property(fc.nat(entries.length), (cut) => {
				const state = foldEntries(entries.slice(0, cut));
				for (const entry of entries.slice(cut)) applyEntry(state, entry);
				expect(state).toEqual(shop.state);
			}),
			{ numRuns: 25 }
		);
	});

	test('is a fold that changes no entry', () => {
		expect(() => foldEntries(entries)).not.toThrow();
		expect(entries).toEqual(shop.journal.entries);
	});

	test('of a part of the record knows nothing of what came after', () => {
		const before = entries.findIndex(({ event }) => event === 'incident.reported');
		const state = foldEntries(entries.slice(0, before));
		expect(state.incidents.size).toBe(0);
		expect(state.signOffs.byId.size).toBe(2);
		expect([...state.signOffs.byId.values()].every(({ suspended }) => suspended === null)).toBe(true);
	});

	test('of nothing is empty', () => {
		const state = foldEntries([]);
		expect(state.shop.founded).toBeNull();
		expect(state.people.size).toBe(0);
	});
});

test('twenty thousand entries fold in about the time that ten thousand take twice', async () => {
	const shop = await testShop();
	const [founded] = shop.journal.entries;
	const drill = (n: number): Entry[] => [
		{
			...founded!,
			event: 'proving.issued',
			data: { run: 'r', drill: `d${n}`, person: 'trn-1', kind: 'k', seed: `${n}` }
		} as unknown as Entry,
		{
			...founded!,
			event: 'proving.handed-in',
			data: { run: 'r', drill: `d${n}`, person: 'trn-1', right: true, safetyMisses: [], findings: [] }
		} as unknown as Entry
	];
	const timed = (count: number) => {
		const entries = Array.from({ length: count / 2 }, (_, n) => drill(n)).flat();
		const from = performance.now();
		foldEntries(entries);
		return performance.now() - from;
	};
	timed(4000);
	const [small, large] = [timed(10_000), timed(20_000)];
	// a fold that copied its state would take four times as long, and seconds
	expect(large).toBeLessThan(small * 3 + 100);
	expect(large).toBeLessThan(2000);
});

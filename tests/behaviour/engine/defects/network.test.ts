import { describe, expect, test } from 'vitest';
import {
	bestTest,
	chanceOf,
	expectedInformation,
	openTests,
	posterior,
	type Evidence,
	type Network
} from '$lib/engine';
import { randomCase } from './random-network';

/**
 * The other way round: every state of the causes with every set of results written out as one table, and everything read
 * off by counting rows. The engine never writes the table down.
 */
function table({ causes, leak, tests }: Network) {
	const rows: { causes: boolean[]; defect: boolean; results: boolean[]; chance: number }[] = [];
	const [c, t] = [causes.length, tests.length];
	for (let state = 0; state < 2 ** (c + 1 + t); state += 1) {
		const bit = (at: number) => Boolean((state >> at) & 1);
		const so = causes.map((_, at) => bit(at));
		const defect = bit(c);
		const results = tests.map((_, at) => bit(c + 1 + at));
		let chance = 1;
		let away = 1 - leak;
		causes.forEach(({ prior, strength }, at) => {
			chance *= so[at] ? prior : 1 - prior;
			if (so[at]) away *= 1 - strength;
		});
		chance *= defect ? 1 - away : away;
		tests.forEach(({ of, sensitivity, falseAlarm }, at) => {
			const any = causes.some(({ id }, index) => so[index] && of.includes(id));
			const positive = any ? sensitivity : falseAlarm;
			chance *= results[at] ? positive : 1 - positive;
		});
		rows.push({ causes: so, defect, results, chance });
	}
	return rows;
}

type Row = ReturnType<typeof table>[number];
const sum = (rows: readonly Row[]) => rows.reduce((total, { chance }) => total + chance, 0);

const fitting = (network: Network, rows: readonly Row[], { defect, results = {}, causes = {} }: Evidence) =>
	rows.filter(
		(row) =>
			(defect === undefined || row.defect === defect) &&
			network.tests.every(({ id }, at) => results[id] === undefined || results[id] === row.results[at]) &&
			network.causes.every(({ id }, at) => causes[id] === undefined || causes[id] === row.causes[at])
	);

/** Bits open about the joint state of all causes. */
function openBits(rows: readonly Row[]): number {
	const whole = sum(rows);
	const states = new Map<string, number>();
	for (const { causes, chance } of rows)
		states.set(String(causes), (states.get(String(causes)) ?? 0) + chance / whole);
	return [...states.values()].reduce((bits, p) => (p > 0 ? bits - p * Math.log2(p) : bits), 0);
}

/** Open bits now less those expected after the test: the definition, over the whole table. */
function told(rows: readonly Row[], at: number): number {
	const whole = sum(rows);
	const after = [true, false]
		.map((positive) => rows.filter(({ results }) => results[at] === positive))
		.filter((part) => sum(part) > 0)
		.reduce((bits, part) => bits + (sum(part) / whole) * openBits(part), 0);
	return openBits(rows) - after;
}

const CASES = 120;
const cases = Array.from({ length: CASES }, (_, seed) => randomCase(seed)).map(({ network, evidence }) => {
	const rows = table(network);
	return { network, evidence, rows, known: fitting(network, rows, evidence) };
});

const CLOSE = 1e-12;
const near = (actual: number, expected: number) =>
	expect(Math.abs(actual - expected), `${actual} is not ${expected}`).toBeLessThanOrEqual(CLOSE);

describe('a random network', () => {
	test('the cases reach tests of several causes, of one and of none, and every sort of evidence', () => {
		const tests = cases.flatMap(({ network }) => network.tests.map(({ of }) => of.length));
		expect(tests).toEqual(expect.arrayContaining([0, 1, 2, 3]));
		const sorts = new Set(cases.map(({ evidence: { defect } }) => String(defect)));
		expect([...sorts].sort()).toEqual(['false', 'true', 'undefined']);
		expect(cases.some(({ evidence }) => Object.keys(evidence.results ?? {}).length > 1)).toBe(true);
		expect(cases.some(({ evidence }) => Object.keys(evidence.causes ?? {}).length > 0)).toBe(true);
		expect(Math.max(...cases.map(({ network }) => network.causes.length))).toBe(8);
	});

	test('has the chance of its evidence that the whole table gives', () => {
		for (const { network, evidence, rows, known } of cases) {
			near(sum(rows), 1);
			near(chanceOf(network, evidence), sum(known));
		}
	});

	test('has the posterior that the whole table gives', () => {
		for (const { network, evidence, known } of cases) {
			const chances = posterior(network, evidence);
			network.causes.forEach(({ id }, at) =>
				near(chances[id]!, sum(known.filter(({ causes }) => causes[at])) / sum(known))
			);
		}
	});

	test('expects of each test what the whole table gives, about the joint state', () => {
		for (const { network, evidence, known } of cases)
			network.tests.forEach((one, at) => {
				if (evidence.results?.[one.id] !== undefined) return;
				near(expectedInformation(network, evidence, one), told(known, at));
			});
	});

	test('has the best test that an exhaustive search finds', () => {
		for (const { network, evidence, known } of cases) {
			const open = network.tests
				.map(({ id }, at) => ({ id, bits: told(known, at) }))
				.filter(({ id }) => evidence.results?.[id] === undefined);
			const best = bestTest(network, evidence);
			if (!open.length) {
				expect(best).toBeUndefined();
				continue;
			}
			const most = Math.max(...open.map(({ bits }) => bits));
			near(best!.bits, most);
			near(open.find(({ id }) => id === best!.id)!.bits, most);
		}
	});

	test('tells no less than nothing and no more than is open', () => {
		for (const { network, evidence, known } of cases)
			for (const { bits } of openTests(network, evidence)) {
				expect(bits).toBeGreaterThanOrEqual(0);
				expect(bits).toBeLessThanOrEqual(Math.min(1, openBits(known)) + CLOSE);
			}
	});
});

describe('the network', () => {
	const network: Network = {
		causes: [
			{ id: 'a', prior: 0.3, strength: 0.8 },
			{ id: 'b', prior: 0.3, strength: 0.8 }
		],
		leak: 0.02,
		tests: [
			{ id: 'of-a', of: ['a'], sensitivity: 0.9, falseAlarm: 0.1 },
			{ id: 'of-none', of: [], sensitivity: 0.5, falseAlarm: 0.5 }
		]
	};

	test('explains away: one cause proven makes the other less likely', () => {
		const before = posterior(network, { defect: true }).b!;
		const after = posterior(network, { defect: true, causes: { a: true } }).b!;
		expect(before).toBeGreaterThan(0.3);
		expect(after).toBeLessThan(before);
	});

	test('knows nothing of causes by a test that touches none', () => {
		expect(expectedInformation(network, { defect: true }, network.tests[1]!)).toBe(0);
	});

	test('is certain of what is beyond doubt', () => {
		const evidence = { causes: { a: true, b: false } };
		expect(posterior(network, evidence)).toEqual({ a: 1, b: 0 });
		expect(chanceOf(network, evidence)).toBeCloseTo(0.3 * 0.7, 12);
	});

	test('refuses what cannot be, and names that are not in it', () => {
		const impossible = { ...network, leak: 0 };
		expect(() => posterior(impossible, { defect: true, causes: { a: false, b: false } })).toThrow(
			'cannot be'
		);
		expect(() => posterior({ ...network, leak: 1.2 }, {})).toThrow('1.2 is no chance');
		expect(() => posterior({ ...network, leak: Number.NaN }, {})).toThrow('NaN is no chance');
		expect(() => posterior(network, { results: { 'of-c': true } })).toThrow('of-c');
		expect(() => posterior(network, { causes: { c: true } })).toThrow("'c'");
		expect(() => posterior({ ...network, causes: [...network.causes, network.causes[0]!] }, {})).toThrow(
			'twice'
		);
	});
});

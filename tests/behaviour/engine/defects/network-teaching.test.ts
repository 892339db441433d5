import { describe, expect, test } from 'vitest';
import {
	BY_EYE,
	byRule,
	DIAGNOSIS_TEACHING,
	diagnose,
	expectedInformation,
	FITS,
	networkOf,
	posterior,
	ruleById,
	RULES,
	testEnd,
	tracedChance,
	type Traced
} from '$lib/engine';

const { brokenWhere, strength, leak, test: rates } = DIAGNOSIS_TEACHING;

describe('the rates of the diagnosis network', () => {
	test('fall in the order of the fits, so that the network never contradicts the ranking', () => {
		const known = FITS.filter((fit) => fit !== 'shown' && fit !== 'excluded').map(
			(fit) => brokenWhere[fit].value
		);
		expect(known).toEqual(known.toSorted((a, b) => b - a));
		expect(new Set(known).size).toBeGreaterThan(3);
	});

	test('are a teaching model each, said so in both languages', () => {
		const all: Traced[] = [
			...Object.values(brokenWhere),
			strength,
			leak,
			...Object.values(rates).flatMap((one) => Object.values(one))
		];
		expect(all).toHaveLength(11);
		for (const { origin, label, provenance } of all) {
			expect(origin).toEqual({ kind: 'teaching-model' });
			expect(label.en).toMatch(/^Teaching model: /);
			expect(label.es).toMatch(/^Modelo didáctico: /);
			expect(provenance.origin).toBe('common-practice');
		}
	});

	test('make a reading tell more than a look', () => {
		const network = networkOf(diagnose('thin-edges'));
		const of = [network.causes[0]!.id];
		const [reading, eye] = (['reading', 'eye'] as const).map((end) =>
			expectedInformation(
				network,
				{ defect: true },
				{
					id: end,
					of,
					sensitivity: rates[end].sensitivity.value,
					falseAlarm: rates[end].falseAlarm.value
				}
			)
		);
		expect(reading).toBeGreaterThan(eye!);
		expect(eye).toBeGreaterThan(0);
	});

	test('say of every look which rule it looks for', () => {
		const causing = RULES.filter(({ breaks }) => Object.keys(breaks).length).map(({ id }) => id);
		expect(BY_EYE.filter((id) => !causing.includes(id))).toEqual([]);
		expect(new Set(BY_EYE).size).toBe(BY_EYE.length);
		expect(causing.some((id) => testEnd(id) === 'reading')).toBe(true);
		for (const one of RULES)
			for (const other of RULES)
				if (one.evidence.en === other.evidence.en) expect(testEnd(one.id)).toBe(testEnd(other.id));
	});
});

describe('the network of a defect', () => {
	test('holds one cause for each rule, too low and too high together', () => {
		const causes = diagnose('orange-peel');
		const ids = networkOf(causes).causes.map(({ id }) => id);
		expect(causes.filter(({ rule }) => rule === 'gun-distance')).toHaveLength(2);
		expect(ids.filter((id) => id === 'gun-distance')).toHaveLength(1);
		expect([...ids].sort()).toEqual([...new Set(causes.map(({ rule }) => rule))].sort());
		expect(networkOf(causes).tests.map(({ of }) => of)).toEqual(ids.map((id) => [id]));
	});

	test('gives one test to rules that name the same one', () => {
		const { tests } = networkOf(diagnose('amine-bloom'));
		const mixed = tests.find(({ of }) => of.includes('hardener-by-weight'));
		expect(mixed!.of).toEqual(['hardener-by-volume', 'hardener-by-weight']);
		expect(ruleById('hardener-by-weight').evidence).toEqual(ruleById('hardener-by-volume').evidence);
	});

	test('takes the better fit where a rule has two ways', () => {
		const [low, high] = diagnose('orange-peel').filter(({ rule }) => rule === 'gun-distance');
		expect(
			byRule([
				{ ...low!, fit: 'kept' },
				{ ...high!, fit: 'recorded' }
			])[0]!.fit
		).toBe('recorded');
	});

	test('takes no test for a fit: results go in as evidence', () => {
		const [first] = diagnose('thin-edges');
		expect(() => networkOf([{ ...first!, fit: 'shown' }])).toThrow(first!.rule);
		expect(() => networkOf([{ ...first!, fit: 'excluded' }])).toThrow(first!.rule);
	});

	test('traces a chance to every rate it came from', () => {
		const causes = diagnose('thin-edges');
		const traced = tracedChance(causes, causes[0]!);
		expect(traced.value).toBe(posterior(networkOf(causes), { defect: true })[causes[0]!.rule]);
		expect(Object.values(traced.inputs).map(({ value }) => value)).toEqual(
			expect.arrayContaining([brokenWhere.unknown.value, strength.value, leak.value])
		);
	});
});

import { describe, expect, test } from 'vitest';
import { celsius, minutes, ovenOutcome, rightAnswers, solve, type Answers, type DefectId } from '$lib/engine';
import { degreeOf } from '../../../../src/lib/engine/outcome/degree';
import { choice, job, quantity, shop } from '../rules/bench';

const plan = solve(job(), shop);
const outcome = (over: Answers) => ovenOutcome(plan, { ...rightAnswers(plan), ...over }, job(), shop);
const severity = (over: Answers, defect: DefectId) =>
	outcome(over).defects.find((one) => one.defect === defect)?.severity;

describe('how far outside', () => {
	const pressure = (beyond: number, amber: number) =>
		degreeOf({ beyond, amber, limit: 10, dimension: 'pressure' });

	test('amber is slight, red is clear, three ambers or half of the limit are severe', () => {
		expect([1, 1.01, 2.99, 3].map((beyond) => pressure(beyond, 1))).toEqual([1, 2, 2, 3]);
		expect([4.9, 5].map((beyond) => pressure(beyond, 4))).toEqual([2, 3]);
		expect([0.1, 4.9, 5].map((beyond) => pressure(beyond, 0))).toEqual([2, 2, 3]);
	});

	test('of a temperature is degrees, and of a limit of nothing never half', () => {
		const at = (beyond: number, limit: number, dimension: 'temperature' | 'fraction') =>
			degreeOf({ beyond, amber: 0, limit, dimension });
		expect([at(14, 350, 'temperature'), at(15, 350, 'temperature')]).toEqual([2, 3]);
		expect(at(0.9, 0, 'fraction')).toBe(2);
	});
});

describe('a defect', () => {
	const short = { 'cure-hold': quantity(minutes(55)) };
	const cool = { 'cure-temperature': quantity(celsius(142)) };

	test('is as bad as the worst breach behind it, and names them all', () => {
		expect(severity(short, 'soft-film')).toBe(1);
		expect(outcome({ ...short, ...cool }).defects.find(({ defect }) => defect === 'soft-film')?.from).toEqual(
			[
				{ rule: 'cure-part-temperature', direction: 'low' },
				{ rule: 'hold-time', direction: 'low' }
			]
		);
	});

	test('is one worse where breaches of two fields meet, and never worse than severe', () => {
		expect(severity({ ...short, ...cool }, 'soft-film')).toBe(2);
		expect(severity({ 'cure-hold': quantity(60), ...cool }, 'soft-film')).toBe(3);
	});

	test('is not worse where two rules of one field are broken by one answer', () => {
		// both the law's limit and the window of the shop
		const high = { 'cap-pressure': quantity(0.7e5) };
		const { from, severity: found } = outcome(high).defects.find(({ defect }) => defect === 'dry-spray')!;
		expect(from.map(({ rule }) => rule)).toEqual(['cap-pressure', 'hvlp-limit']);
		expect(found).toBe(2);
	});

	test('of a wrong option is clear, of a broken safety rule severe', () => {
		expect(severity({ 'thinner-kind': choice('ketone') }, 'blushing')).toBe(2);
		expect(severity({ 'cure-temperature': quantity(celsius(261)) }, 'over-cure')).toBe(3);
	});

	test('comes worst first', () => {
		const all = outcome({ ...short, 'gun-distance': quantity(0.9), strainer: quantity(151e-6) }).defects;
		const order = all.map((one) => one.severity);
		expect(order).toEqual([...order].sort((a, b) => b - a));
		expect(new Set(order).size).toBeGreaterThan(1);
	});
});

test('an empty line does no harm to the film; an empty safety line is a safety stop as it is to the findings', () => {
	const asked = ['flash-time', 'rags'] as const;
	const { defects, harm, exposure, unset } = ovenOutcome(plan, {}, job(), shop, asked);
	expect(defects).toEqual([]);
	expect(unset).toEqual(['flash-time', 'rags']);
	expect(harm).toEqual(['rags-in-metal-can']);
	expect(exposure).toEqual([{ harm: 'fire', rules: ['rags-in-metal-can'] }]);
});

test('no data sheet, no outcome', () =>
	expect(() => ovenOutcome(plan, {}, job(), { ...shop, sheets: {} })).toThrow(RangeError));

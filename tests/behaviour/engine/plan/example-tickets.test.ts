import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
	DEMO_SHEETS,
	EXAMPLE_JOBS,
	examplesByRule,
	exampleTickets,
	jobSchema,
	RULES,
	type Shop
} from '$lib/engine';
import { shop } from '../rules/bench';

const tickets = exampleTickets(shop);
const byRule = examplesByRule(tickets);

describe('example jobs', () => {
	test('have one name each and are jobs', () => {
		expect(new Set(EXAMPLE_JOBS.map(({ id }) => id)).size).toBe(EXAMPLE_JOBS.length);
		for (const { job } of tickets) expect(v.safeParse(jobSchema, job).issues).toBeUndefined();
	});

	test('are tried with every sheet of the shop', () => {
		expect(tickets).toHaveLength(EXAMPLE_JOBS.length * DEMO_SHEETS.length);
		expect(exampleTickets({ ...shop, sheets: {} })).toEqual([]);
	});

	test.each(RULES.filter(({ id }) => id !== 'windows-meet').map(({ id }) => [id]))('show %s', (id) => {
		expect(byRule.get(id)?.length).toBeGreaterThan(0);
	});

	test('are in date on whatever day they are looked at', () => {
		const later: Shop = { ...shop, on: '2031-02-28' };
		const plain = exampleTickets(later).filter(
			({ id, sheet }) => id === 'steel-plates' && sheet.family === 'F'
		);
		expect(plain.map(({ job, plan }) => [job.on, plan.decision])).toEqual([['2031-02-28', 'accept']]);
		const shown = examplesByRule(plain);
		expect([shown.has('lot-in-date'), shown.get('sound-lot-used')?.length]).toEqual([false, 1]);
	});

	test('come without hardener where the coating has one part', () => {
		for (const { job, sheet } of tickets) expect(job.shelf.hardenerState === null).toBe(sheet.parts === 1);
	});
});

test('limits that do not meet are shown where a sheet of the shop brings them about', () => {
	const [sheet] = DEMO_SHEETS.filter(({ family }) => family === 'C');
	const [line] = sheet!.lines['cap-pressure']!;
	const harsh = { ...sheet!, lines: { ...sheet!.lines, 'cap-pressure': [{ ...line!, min: 1.2, max: 1.5 }] } };
	const shown = examplesByRule(exampleTickets({ ...shop, sheets: { [harsh.id]: harsh } }));
	expect([shown.has('windows-meet'), byRule.has('windows-meet')]).toEqual([true, false]);
});

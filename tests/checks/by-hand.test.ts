import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import {
	DEMO_SHEETS,
	field,
	grade,
	jobSchema,
	solve,
	unitOf,
	type Answer,
	type FieldId,
	type Job,
	type Shop
} from '$lib/engine';

/*
 * Tickets worked by hand by somebody who had not seen the engine, from the trade's tables and standards, with the
 * working beside each entry. `disagreed` says who was wrong where hand and engine differed at first.
 */
type Worked = {
	readonly ticket: number;
	readonly job: Job;
	readonly entries: Readonly<
		Record<
			string,
			{
				readonly answer:
					string | readonly string[] | { readonly value: number; readonly unit: string } | null;
				readonly working: string;
				readonly disagreed?: string;
			}
		>
	>;
};

const tickets = Object.values(
	import.meta.glob<Worked>('./by-hand/*.json', { eager: true, import: 'default' })
);
const shop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};

/** Hand arithmetic is rounded to three digits. */
const ROUNDED = 0.004;

function answerOf(id: FieldId, by: Worked['entries'][string]['answer']): Answer | undefined {
	const spec = field(id);
	if (by === null) return undefined;
	if (typeof by === 'string') return { kind: 'choice', option: by };
	if ('unit' in by && spec.kind === 'quantity') {
		const value = unitOf(spec.dimension, by.unit).toSi(by.value);
		return { kind: 'quantity', value, typed: '', rounding: Math.abs(value) * ROUNDED };
	}
	return { kind: spec.kind as 'choices' | 'order', options: by as readonly string[] };
}

describe('tickets worked by hand', () => {
	test('are at least 20, over all six families, at least 6 of them not to be started', () => {
		expect(tickets.length).toBeGreaterThanOrEqual(20);
		expect(new Set(tickets.map(({ job }) => shop.sheets[job.coating]?.family)).size).toBe(6);
		expect(
			tickets.filter(({ entries }) => entries.decision?.answer !== 'accept').length
		).toBeGreaterThanOrEqual(6);
		expect(tickets.flatMap(({ entries }) => Object.keys(entries)).length).toBeGreaterThan(250);
		for (const { job } of tickets) expect(v.is(jobSchema, job)).toBe(true);
	});

	describe.each(tickets.map((one) => [one.ticket, one] as const))(
		'ticket %i',
		(_number, { job, entries }) => {
			const plan = solve(job, shop);
			test.each(Object.entries(entries))('%s', (id, { answer, working }) => {
				const asked = plan.fields.some((planned) => planned.field === id);
				const given = answerOf(id as FieldId, answer);
				expect(working.length).toBeGreaterThan(10);
				// not reached by hand: not planned either
				if (!given) return expect(asked).toBe(false);
				expect(asked).toBe(true);
				const { breaches } = grade(plan, { [id]: given }, [id as FieldId]);
				expect(breaches.map(({ rule }) => rule)).toEqual([]);
			});
		}
	);
});

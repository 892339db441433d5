import { describe, expect, test } from 'vitest';
import { makeTicket, TRAPS } from '$lib/drills';
import { DEMO_SHEETS, grade, rightAnswers, RULES, solve, type Shop } from '$lib/engine';

const shop: Shop = {
	on: '2026-11-25',
	sheets: Object.fromEntries(DEMO_SHEETS.map((sheet) => [sheet.id, sheet])),
	settings: {}
};
const SEEDS = 6000;

test('at least 25 traps, each at a rule that exists', () => {
	expect(TRAPS.length).toBeGreaterThanOrEqual(25);
	expect(new Set(TRAPS.map(({ id }) => id)).size).toBe(TRAPS.length);
	const rules = new Set(RULES.map(({ id }) => id));
	expect(TRAPS.filter(({ rule }) => !rules.has(rule)).map(({ id }) => id)).toEqual([]);
});

describe('overlooking a trap is found at its rule', () => {
	test.each(TRAPS.map((trap) => [trap.id, trap] as const))('%s', (_id, trap) => {
		for (let seed = 0; seed < SEEDS; seed += 1) {
			const { job, traps } = makeTicket({ seed, breadth: 3, shop, about: trap.rule })!;
			if (!traps.includes(trap.id)) continue;
			const plan = solve(job, shop);
			const answers = { ...rightAnswers(plan), ...trap.overlooked(plan, job, shop) };
			if (grade(plan, answers).breaches.some(({ rule }) => rule === trap.rule)) return;
		}
		expect.unreachable(`no seed below ${SEEDS} shows it`);
	});
});

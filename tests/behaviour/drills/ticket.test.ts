import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { makeTicket, TRAPS, type Breadth } from '$lib/drills';
import { grade, jobSchema, rightAnswers, ruleById, solve, type Plan } from '$lib/engine';
import { breaking } from './breaking';
import { demoShop } from './shop';

const SEEDS = 100_000;
const shop = demoShop();
const breadthOf = (seed: number) => ((seed % 3) + 1) as Breadth;

/** Names the first demand whose breach is not found at its own rule. */
function unfound(plan: Plan): string | undefined {
	for (const planned of plan.fields)
		for (const demand of planned.demands) {
			const { field } = planned;
			const answer = breaking({ field }, demand);
			if (!answer) return `${field}: nothing breaks ${demand.rule}`;
			const { breaches } = grade({ ...plan, fields: [planned] }, { [field]: answer });
			if (!breaches.some(({ rule }) => rule === demand.rule)) return `${field}: ${demand.rule}`;
		}
	return undefined;
}

describe(`${SEEDS} tickets`, () => {
	const met = {
		rules: new Set<string>(),
		traps: new Set<string>(),
		coatings: new Set<string>(),
		decisions: new Map<string, number>()
	};

	test(
		'are valid, solvable or rightly refused, pass with the plan’s own answers, and show every breach',
		{ timeout: 900_000 },
		() => {
			for (let seed = 0; seed < SEEDS; seed += 1) {
				const { job, traps } = makeTicket({ seed, breadth: breadthOf(seed), shop })!;
				const plan = solve(job, shop);
				const problems: string[] = [];
				if (!v.is(jobSchema, job)) problems.push('not a valid job');
				if (plan.decision !== 'accept' && !plan.reasons.length)
					problems.push(`${plan.decision} without a reason`);
				for (const reason of plan.reasons)
					if (ruleById(reason).field !== 'decision') problems.push(`${reason} is no reason`);
				const own = grade(plan, rightAnswers(plan));
				if (own.result !== 'clear')
					problems.push(`own answers: ${own.breaches.map(({ rule }) => rule).join(', ')}`);
				problems.push(...[unfound(plan)].filter((one) => one !== undefined));
				if (problems.length) expect.fail(`seed ${seed}: ${problems.join('; ')}`);
				met.coatings.add(job.coating);
				traps.forEach((trap) => met.traps.add(trap));
				plan.fields.forEach(({ demands }) => demands.forEach(({ rule }) => met.rules.add(rule)));
				met.decisions.set(plan.decision, (met.decisions.get(plan.decision) ?? 0) + 1);
			}
		}
	);

	test('meet every trap, every coating and every decision', () => {
		expect(TRAPS.map(({ id }) => id).filter((id) => !met.traps.has(id))).toEqual([]);
		expect([...met.coatings].sort()).toEqual(Object.keys(shop.sheets).sort());
		expect([...met.decisions.keys()].sort()).toEqual(['accept', 'ask', 'refuse']);
	});
});

test('the same order gives the same ticket, and another seed another', () => {
	for (let seed = 0; seed < 200; seed += 1)
		expect(makeTicket({ seed, breadth: breadthOf(seed), shop })).toEqual(
			makeTicket({ seed, breadth: breadthOf(seed), shop })
		);
	const distinct = new Set(
		Array.from({ length: 200 }, (_, seed) => JSON.stringify(makeTicket({ seed, breadth: 2, shop })?.job))
	);
	expect(distinct.size).toBe(200);
});

test('a seed that is no seed is refused', () => {
	for (const seed of [-1, 1.5, NaN, 2 ** 31, Infinity])
		expect(() => makeTicket({ seed, breadth: 1, shop })).toThrow(RangeError);
});

test('a shop without a usable coating gets no ticket', () => {
	expect(makeTicket({ seed: 1, breadth: 1, shop: { ...shop, sheets: {} } })).toBeUndefined();
});

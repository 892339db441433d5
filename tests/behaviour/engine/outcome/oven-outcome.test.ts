import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LARGEST_SEED, makeTicket, TRAPS, type Breadth } from '$lib/drills';
import {
	bar,
	celsius,
	exampleTickets,
	field,
	limits,
	ovenOutcome,
	rightAnswers,
	ruleById,
	RULES,
	si,
	solve,
	type Answer,
	type DefectId,
	type Demand,
	type Direction,
	type FieldId,
	type Job,
	type MeasureId,
	type Outcome,
	type OutcomeMeasure,
	type Plan,
	type Shop
} from '$lib/engine';
import { harmOf } from '../../../../src/lib/engine/outcome/harm';
import { measure } from '../../../../src/lib/engine/grading/measure';
import { breaking } from '../../drills/breaking';
import { demoShop } from '../../drills/shop';
import { job } from '../rules/bench';

const shop = demoShop();
const planned = (job: Job, inForce: Shop = shop) => {
	const plan = solve(job, inForce);
	return { job, plan, right: rightAnswers(plan), inForce };
};
type Issued = ReturnType<typeof planned>;
const issued = (seed: number) =>
	planned(makeTicket({ seed, breadth: ((seed % 3) + 1) as Breadth, shop })!.job);
const anyTicket = fc.integer({ min: 0, max: LARGEST_SEED }).map(issued);
const quantity = (value: number): Answer => ({ kind: 'quantity', value: si(value), typed: '' });
const severityOf = ({ defects }: Outcome, defect: DefectId) =>
	defects.find((one) => one.defect === defect)?.severity ?? 0;
const measureOf = ({ measures }: Outcome, id: MeasureId): OutcomeMeasure | undefined =>
	measures.find((one) => one.id === id);

/** The rule's own list, for a person's eye: which way of breaking it this is, and what it says then comes out. */
const promised = (id: string, off: Direction): readonly DefectId[] => {
	const { breaks, field: asked } = ruleById(id);
	if (field(asked).kind === 'quantity' || breaks[off]) return breaks[off] ?? [];
	return Object.values(breaks).flat();
};

/** Answers further and further out of everything the plan allows, on one side. */
function outwards(plan: Plan, id: FieldId, way: 'low' | 'high'): readonly Answer[] {
	const { demands } = plan.fields.find((one) => one.field === id)!;
	const windows = demands.map(({ expectation }) => limits(expectation)!);
	const ends = windows.map(({ min, max }) => (way === 'low' ? min : max)).filter(Number.isFinite);
	if (!ends.length) return [];
	const from = way === 'low' ? Math.max(...ends) : Math.min(...ends);
	const step = Math.max(Math.abs(from) * 0.01, 1e-7);
	return [0, 0.5, 1, 2, 3, 5, 8, 13, 21, 34, 55, 89, 144, 300, 1000].map((steps) =>
		quantity(way === 'low' ? from - steps * step : from + steps * step)
	);
}

describe('the plan’s own answers', () => {
	test('give no defect, no harm, and every measure as wanted', () => {
		const seen = new Set<MeasureId>();
		fc.assert(
			fc.property(anyTicket, ({ job, plan, right }) => {
				const outcome = ovenOutcome(plan, right, job, shop);
				expect(outcome).toMatchObject({ model: 'teaching', defects: [], harm: [], exposure: [], unset: [] });
				for (const one of outcome.measures) {
					seen.add(one.id);
					expect(one, one.id).toMatchObject({ degree: 0, side: null });
					if (one.kind === 'index') expect(one.index).toBe(one.id === 'key' || one.id === 'wetness' ? 0 : 1);
					else expect(one.value).not.toBeNull();
				}
			}),
			{ numRuns: 400, seed: 1 }
		);
		expect(seen.size).toBe(8);
	});
});

/** Tickets on which every rule speaks: random ones, one for each trap, the examples, and what no trap weaves. */
function tickets(): readonly Issued[] {
	const random = Array.from({ length: 120 }, (_, seed) => issued(seed));
	const trapped = TRAPS.map(({ rule }, seed) => makeTicket({ seed, breadth: 3, shop, about: rule })!);
	const cold = job({ weather: { air: celsius(15) } });
	const narrow: Shop = {
		...shop,
		settings: { 'gun.cap-pressure': { from: '2026-01-01', min: bar(0.8), max: bar(1) } }
	};
	return [
		...random,
		...trapped.map(({ job }) => planned(job)),
		...exampleTickets(shop).map(({ job }) => planned(job)),
		planned(cold),
		// the law's limit for the gun and the shop's window no longer meet
		...Object.keys(shop.sheets).map((coating) => planned(job({ coating }), narrow))
	];
}

/** Answers that break a demand: on its upper or only side, and on its lower one where it has two. */
function breakings(id: FieldId, demand: Demand): readonly Answer[] {
	const answer = breaking({ field: id }, demand);
	if (!answer) throw new Error(`nothing breaks ${demand.rule}`);
	const window = limits(demand.expectation);
	if (!window || !Number.isFinite(window.min) || !Number.isFinite(window.max)) return [answer];
	return [answer, quantity(window.min - Math.abs(window.min) * 0.4 - 1e-3)];
}

describe('every demand that is broken', () => {
	test('brings out what its rule says breaks, on either side', { timeout: 240_000 }, () => {
		const shown = new Set<string>();
		const missing = new Set<string>();
		for (const { job, plan, right, inForce } of tickets())
			for (const { field: id, demands } of plan.fields)
				for (const demand of demands)
					for (const answer of breakings(id, demand)) {
						const { rule, severity, expectation } = demand;
						const { off } = measure(answer, expectation);
						if (off === null) throw new Error(`${rule} is not broken`);
						const outcome = ovenOutcome(plan, { ...right, [id]: answer }, job, inForce);
						for (const defect of promised(rule, off)) {
							shown.add(`${rule} ${defect}`);
							const from = outcome.defects.find((one) => one.defect === defect)?.from ?? [];
							if (!from.some((one) => one.rule === rule)) missing.add(`${rule} ${off}: ${defect}`);
						}
						const told = outcome.exposure.flatMap(({ rules }) => rules);
						if (severity === 'safety-stop' && !(outcome.harm.includes(rule) && told.includes(rule)))
							missing.add(`${rule}: harm`);
					}
		expect([...missing]).toEqual([]);
		const all = RULES.flatMap(({ id, breaks }) =>
			Object.values(breaks)
				.flat()
				.map((defect) => `${id} ${defect}`)
		);
		expect(all.filter((one) => !shown.has(one))).toEqual([]);
	});
});

describe('going further out', () => {
	const further = fc.record({
		ticket: anyTicket.filter(({ plan }) => plan.decision === 'accept'),
		pick: fc.nat(),
		way: fc.constantFrom('low' as const, 'high' as const)
	});

	test('never lessens a defect, nor brings a measure back', () => {
		let moved = 0;
		fc.assert(
			fc.property(further, ({ ticket: { job, plan, right }, pick, way }) => {
				const numbers = plan.fields.filter(({ field: id }) => field(id).kind === 'quantity');
				const { field: id } = numbers[pick % numbers.length]!;
				let before = ovenOutcome(plan, right, job, shop);
				for (const answer of outwards(plan, id, way)) {
					const outcome = ovenOutcome(plan, { ...right, [id]: answer }, job, shop);
					for (const { defect, severity } of before.defects)
						expect(severityOf(outcome, defect), `${id} ${way}: ${defect}`).toBeGreaterThanOrEqual(severity);
					for (const one of before.measures) {
						const now = measureOf(outcome, one.id)!;
						const where = `${id} ${way}: ${one.id}`;
						expect(now.degree, where).toBeGreaterThanOrEqual(one.degree);
						if (one.side) expect(now.side, where).toBe(one.side);
						if (one.kind === 'index' && now.kind === 'index') {
							const away = (index: number) =>
								Math.abs(index - (one.id === 'key' || one.id === 'wetness' ? 0 : 1));
							expect(away(now.index), where).toBeGreaterThanOrEqual(away(one.index));
						}
						if (now.degree > 0) moved += 1;
					}
					before = outcome;
				}
			}),
			{ numRuns: 400, seed: 2 }
		);
		expect(moved).toBeGreaterThan(300);
	});

	test('never lessens a defect of a job on which something else is wrong already', () => {
		let raised = 0;
		fc.assert(
			fc.property(further, fc.nat(), ({ ticket: { job, plan, right }, pick, way }, also) => {
				const numbers = plan.fields.filter(({ field: id }) => field(id).kind === 'quantity');
				const { field: id } = numbers[pick % numbers.length]!;
				const others = plan.fields.filter((one) => one.field !== id);
				const { field: other, demands } = others[also % others.length]!;
				const wrong = { ...right, [other]: breaking({ field: other }, demands[0]!)! };
				let before = ovenOutcome(plan, wrong, job, shop);
				for (const answer of outwards(plan, id, way)) {
					const outcome = ovenOutcome(plan, { ...wrong, [id]: answer }, job, shop);
					for (const { defect, severity } of before.defects) {
						expect(severityOf(outcome, defect), `${id} ${way}: ${defect}`).toBeGreaterThanOrEqual(severity);
						if (severityOf(outcome, defect) > severity) raised += 1;
					}
					expect(outcome.harm).toEqual(expect.arrayContaining([...before.harm]));
					before = outcome;
				}
			}),
			{ numRuns: 200, seed: 3 }
		);
		expect(raised).toBeGreaterThan(50);
	});
});

test('every safety-stop rule has a harm, and no other', () => {
	for (const { id, severity } of RULES)
		if (severity === 'safety-stop') expect(() => harmOf(id), id).not.toThrow();
		else expect(() => harmOf(id), id).toThrow(RangeError);
});

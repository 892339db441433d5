import { describe, expect, test } from 'vitest';
import { makeTicket, type Breadth, type Figure } from '$lib/drills';
import {
	bestTest,
	DEFECTS,
	diagnose,
	field,
	grade,
	networkOf,
	ovenOutcome,
	posterior,
	ruleById,
	solve,
	type Answers,
	type Plan
} from '$lib/engine';
import kind from '../../../../src/lib/drills/kinds/what-went-wrong';
import { drawTruth } from '../../../../src/lib/drills/kinds/what-went-wrong/draw-truth';
import { LARGEST_SEED, seeded } from '../../../../src/lib/drills/random';
import { demoShop } from '../shop';

const shop = demoShop();
const SEEDS = 60;

type CaseFile = Extract<Figure, { kind: 'case-file' }>;

/** A drill on the first ticket of this seed that can be started. */
function make(seed: number) {
	const random = seeded(seed);
	for (;;) {
		const breadth = ((seed % 3) + 1) as Breadth;
		const { job } = makeTicket({ seed: random.integer(0, LARGEST_SEED), breadth, shop })!;
		const plan = solve(job, shop);
		if (plan.decision !== 'accept') continue;
		const made = kind.make({ job, plan, shop }, random);
		if (!made) continue;
		const [one, two] = made.steps.map(({ figures }) => figures[0] as CaseFile);
		const [test, order] = made.fields;
		return {
			job,
			made,
			one: one!,
			two: two!,
			test: test!,
			order: order!,
			plan: { ...plan, fields: made.fields }
		};
	}
}

const drills = Array.from({ length: SEEDS }, (_, seed) => make(seed));
const right = ({ fields }: Plan): Answers =>
	Object.fromEntries(fields.map(({ field, answer }) => [field, answer]));

describe('what went wrong', () => {
	test('is the same drill for the same seed, as plain data', () => {
		for (let seed = 0; seed < 10; seed += 1) expect(make(seed).made).toEqual(drills[seed]!.made);
		for (const { made } of drills) expect(JSON.parse(JSON.stringify(made))).toEqual(made);
	});

	test('has three to six causes, some of them open, and many defects', () => {
		for (const { one } of drills) {
			expect(one.lines.length).toBeGreaterThanOrEqual(3);
			expect(one.lines.length).toBeLessThanOrEqual(6);
			expect(one.lines.filter(({ says }) => says === 'nothing').length).toBeGreaterThanOrEqual(2);
			for (const { rule } of one.lines) {
				const ways = Object.values(ruleById(rule).breaks).flat();
				expect(ways).toContain(one.panel.defect);
			}
		}
		expect(new Set(drills.map(({ one }) => one.panel.defect)).size).toBeGreaterThanOrEqual(10);
		const says = drills.flatMap(({ one }) => one.lines.map((line) => line.says));
		const share = (what: string) => says.filter((one) => one === what).length / says.length;
		expect(share('broken')).toBeGreaterThan(0);
		expect(share('broken')).toBeLessThan(share('kept'));
		expect(share('kept')).toBeLessThan(share('nothing'));
	});

	test('writes in its record what the line says of the rule', () => {
		for (const { job, one } of drills) {
			const recorded = Object.fromEntries(
				one.lines.filter(({ answer }) => answer).map(({ field, answer }) => [field, answer])
			) as Answers;
			const fits = diagnose(one.panel.defect, { ran: { job, shop }, recorded });
			for (const { rule, says } of one.lines) {
				const broken = fits.some((cause) => cause.rule === rule && cause.fit === 'recorded');
				const open = fits.some((cause) => cause.rule === rule && cause.fit === 'unchecked');
				expect(says, rule).toBe(broken ? 'broken' : open ? 'nothing' : 'kept');
			}
		}
	});

	test('takes right answers as right', () => {
		for (const { plan } of drills) expect(grade(plan, right(plan)).result).toBe('clear');
	});

	test('offers each cause’s own test and one that tests no cause, in words that differ', () => {
		for (const { one, test } of drills) {
			const words = Object.values(test.offered!).map(({ en }) => en);
			const own = one.lines.map(({ rule }) => ruleById(rule).evidence.en);
			expect(words).toHaveLength(new Set(own).size + 1);
			expect(new Set(words).size).toBe(words.length);
			expect(words).toEqual(expect.arrayContaining(own));
		}
		// the place of the best test says nothing
		const places = drills.map(({ test }) =>
			Object.keys(test.offered!).indexOf(test.answer.kind === 'choice' ? test.answer.option : '')
		);
		expect(new Set(places).size).toBeGreaterThan(2);
	});

	test('finds the best test by the engine’s own network, within a tenth', () => {
		for (const { job, one, test } of drills) {
			const recorded = Object.fromEntries(
				one.lines.filter(({ answer }) => answer).map(({ field, answer }) => [field, answer])
			) as Answers;
			const asked = one.lines.map(({ rule }) => rule);
			const causes = diagnose(one.panel.defect, { ran: { job, shop }, recorded });
			const network = networkOf(causes.filter(({ rule }) => asked.includes(rule)));
			const best = bestTest(network, { defect: true })!;
			expect(one.told.tests[0]!.bits).toBeCloseTo(best.bits, 12);
			const [demand] = test.demands;
			const good = one.told.tests.filter(({ bits }) => bits >= 0.9 * best.bits).map(({ rules }) => rules[0]);
			expect(demand!.expectation).toMatchObject({ kind: 'one-of', options: good });
			expect(demand!.rule).toBe(one.told.tests[0]!.rules[0]);
			expect(good.length).toBeLessThan(one.lines.length);
		}
	});

	test('finds fault with the test that tells least, and with every one that is not as good', () => {
		for (const { plan, test } of drills) {
			const { expectation, rule } = test.demands[0]!;
			const good = expectation.kind === 'one-of' ? expectation.options : [];
			for (const option of Object.keys(test.offered!).filter((id) => !good.includes(id))) {
				const { breaches, result } = grade(plan, { ...right(plan), 'next-test': { kind: 'choice', option } });
				expect(result).toBe('findings');
				expect(breaches.map((one) => one.rule)).toEqual([rule]);
			}
			expect(good).not.toContain('who-was-on-shift');
		}
	});

	test('orders by what the test told: clear pairs only', () => {
		for (const { two, order } of drills) {
			const chance = Object.fromEntries(two.told.causes.map(({ rule, after }) => [rule, after]));
			for (const { rule, expectation } of order.demands) {
				const pairs = expectation.kind === 'order' ? expectation.before : [];
				expect(pairs.length).toBeGreaterThan(0);
				for (const [first, then] of pairs) {
					expect(first).toBe(rule);
					expect(chance[first]! / chance[then]!).toBeGreaterThanOrEqual(1.5);
				}
			}
		}
	});

	test('demands, through its pairs, every clear difference and no other', () => {
		for (const { plan, two, order } of drills) {
			const rules = two.told.causes.map(({ rule }) => rule);
			const chance = Object.fromEntries(two.told.causes.map(({ rule, after }) => [rule, after]));
			const best = order.answer.kind === 'order' ? order.answer.options : [];
			expect(best.map((rule) => chance[rule]!)).toEqual(Object.values(chance).toSorted((a, b) => b - a));
			for (let at = 0; at + 1 < rules.length; at += 1) {
				const options = best.toSpliced(at, 2, best[at + 1]!, best[at]!);
				const clear = chance[best[at]!]! >= 1.5 * chance[best[at + 1]!]!;
				const { result } = grade(plan, { ...right(plan), 'cause-order': { kind: 'order', options } });
				expect(result).toBe(clear ? 'findings' : 'clear');
			}
		}
	});

	test('starts the order so that leaving it alone is no answer', () => {
		for (const { plan, made } of drills) {
			const untouched = { ...right(plan), ...made.filled };
			expect(grade(plan, untouched).breaches.map(({ field }) => field)).toContain('cause-order');
		}
	});

	test('speaks in the name of rules as they are, none of them a safety stop', () => {
		for (const { plan } of drills)
			for (const { demands } of plan.fields)
				for (const { rule, competency, severity, authority } of demands) {
					expect(ruleById(rule)).toMatchObject({ competency, severity, authority });
					expect(severity).not.toBe('safety-stop');
				}
	});

	test('brings the defect of a wrong choice to the oven door', () => {
		for (const { plan, job, one, test, order } of drills) {
			const who: Answers = { 'next-test': { kind: 'choice', option: 'who-was-on-shift' } };
			const reversed = order.answer.kind === 'order' ? order.answer.options.toReversed() : [];
			const backwards: Answers = { 'cause-order': { kind: 'order', options: reversed } };
			for (const [wrong, rule] of [
				[who, test.demands[0]!.rule],
				[backwards, order.demands[0]!.rule]
			] as const) {
				const { defects } = ovenOutcome(plan, { ...right(plan), ...wrong }, job, shop);
				const found = defects.find(({ defect }) => defect === one.panel.defect);
				expect(
					found?.from.map((from) => from.rule),
					`${one.panel.defect} by ${rule}`
				).toContain(rule);
			}
			expect(ovenOutcome(plan, right(plan), job, shop).defects).toEqual([]);
		}
	});

	test('shows the same case on both pages, the second with what the best test came out with', () => {
		for (const { made, one, two } of drills) {
			expect(two).toEqual({ ...one, result: two.result });
			expect(one.result).toBeNull();
			expect(two.result!.rules).toEqual(one.told.tests[0]!.rules);
			expect(made.steps.map(({ fields }) => fields)).toEqual([['next-test'], ['cause-order']]);
			expect(Object.keys(DEFECTS)).toContain(one.panel.defect);
		}
		expect(new Set(drills.map(({ two }) => two.result!.broken)).size).toBe(2);
	});

	test('writes only what fits its line of the sheet', () => {
		for (const { one } of drills)
			for (const { field: id, answer, says } of one.lines) {
				const spec = field(id);
				if (answer?.kind === 'quantity') expect(answer.value).toBeGreaterThan(says === 'broken' ? 0 : -1e-9);
				if (answer?.kind === 'choice')
					expect(Object.keys(spec.kind === 'choice' ? spec.options : {})).toContain(answer.option);
			}
	});
});

describe('the truth behind a case', () => {
	test('is drawn as often as the network says, and never empty', () => {
		const network = networkOf(diagnose('intercoat-peel'));
		const random = seeded(1);
		const draws = 4000;
		const found: Record<string, number> = {};
		for (let draw = 0; draw < draws; draw += 1) {
			const truth = drawTruth(network, random);
			expect(truth.length).toBeGreaterThan(0);
			for (const rule of truth) found[rule] = (found[rule] ?? 0) + 1;
		}
		const none = posteriorOfNone();
		const chances = posterior(network, { defect: true });
		for (const [rule, chance] of Object.entries(chances)) {
			const expected = chance / (1 - none);
			const spread = Math.sqrt((expected * (1 - expected)) / draws);
			expect(Math.abs(found[rule]! / draws - expected)).toBeLessThan(4 * spread);
		}

		function posteriorOfNone(): number {
			let none = 1;
			const causes: Record<string, boolean> = {};
			for (const { id } of network.causes) {
				none *= 1 - posterior(network, { defect: true, causes: { ...causes } })[id]!;
				causes[id] = false;
			}
			return none;
		}
	});
});

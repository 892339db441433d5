import { describe, expect, test } from 'vitest';
import { DRILL_KINDS, makePracticeDrill, type Breadth, type PracticeDrill } from '$lib/drills';
import { breaksInto, grade, ovenOutcome, rightAnswers, ruleById, type FieldId } from '$lib/engine';
import { breaking } from './breaking';
import { demoShop } from './shop';

const shop = demoShop();
const SEEDS = 60;
/** Rare fields of a long sheet come up rarely. */
const MOST_SEEDS = 2000;

describe.each(DRILL_KINDS.map((kind) => [kind.id, kind] as const))('%s', (part, kind) => {
	const make = (seed: number) =>
		makePracticeDrill({ seed, breadth: ((seed % 3) + 1) as Breadth, shop, part });
	const drills: PracticeDrill[] = [];
	for (let seed = 0; seed < SEEDS; seed += 1) {
		const drill = make(seed);
		if (drill) drills.push(drill);
	}

	test('is found for every seed, and the same for the same seed', () => {
		expect(drills).toHaveLength(SEEDS);
		for (let seed = 0; seed < 5; seed += 1) expect(make(seed)).toEqual(drills[seed]);
		expect(new Set(drills.map(({ job }) => JSON.stringify(job))).size).toBeGreaterThan(SEEDS * 0.9);
	});

	test('asks what it is about and nothing else, each question on one page', () => {
		for (const { plan, steps } of drills) {
			const planned = plan.fields.map((one) => one.field);
			expect(planned.filter((id) => !(kind.asks as readonly string[]).includes(id))).toEqual([]);
			if (!('make' in kind)) expect(planned).toEqual(expect.arrayContaining([...kind.needs]));
			const asked = steps.flatMap(({ fields }) => fields);
			expect([...asked].sort()).toEqual([...planned].sort());
			expect(steps.every(({ fields }) => fields.length > 0)).toBe(true);
		}
	});

	test('names only rules that exist, and says right where the plan does', () => {
		for (const { plan } of drills)
			for (const { demands } of plan.fields) {
				expect(demands.length).toBeGreaterThan(0);
				for (const { rule, severity } of demands) expect(ruleById(rule).severity).toBe(severity);
			}
	});

	test('passes with the plan’s own answers, and shows each breach at its rule', () => {
		for (const { plan } of drills) {
			expect(grade(plan, rightAnswers(plan)).result).toBe('clear');
			for (const planned of plan.fields)
				for (const demand of planned.demands) {
					const answer = breaking(planned, demand)!;
					const { breaches } = grade({ ...plan, fields: [planned] }, { [planned.field]: answer });
					expect(breaches.map(({ rule }) => rule)).toContain(demand.rule);
				}
		}
	});

	test('shows the defects that each breach leads to', () => {
		for (const { plan, job } of drills.slice(0, 20))
			for (const planned of plan.fields)
				for (const demand of planned.demands) {
					const answers = { ...rightAnswers(plan), [planned.field]: breaking(planned, demand)! };
					const breach = grade(plan, answers).breaches.find(({ rule }) => rule === demand.rule)!;
					const led = breaksInto(demand.rule, breach.off!);
					const { defects } = ovenOutcome(plan, answers, job, shop);
					expect(defects.map(({ defect }) => defect)).toEqual(expect.arrayContaining([...led]));
				}
	});

	test('comes to ask every one of its fields, so that none is listed in vain', () => {
		const never = new Set<FieldId>(kind.asks);
		const strike = ({ plan }: PracticeDrill) => plan.fields.forEach(({ field }) => never.delete(field));
		drills.forEach(strike);
		for (let seed = SEEDS; never.size && seed < MOST_SEEDS; seed += 1) strike(make(seed)!);
		expect([...never]).toEqual([]);
	});
});

import { describe, expect, it } from 'vitest';
import { makeProvingDrill } from '$lib/drills';
import { rightAnswers, RULES, STATIONS, type Answer } from '$lib/engine';
import { defaultScheme } from '$lib/learning';
import { judge } from '$lib/server/proving/hand-in';
import { toJournal } from '$lib/server/proving/issued';
import {
	askedRules,
	chanceByCounting,
	chanceByProduct,
	isRight,
	type AskedRule
} from '../../../simulation/drill-chance';
import { practicePool, templateOf } from '../../../simulation/practice-jobs';
import { LEARNING_MODELS, practiceLearner } from '../../../simulation/practice-learner';
import { practiceResult } from '../../../simulation/practice-runs';
import { LEARNERS } from '../../../simulation/proving-learners';
import { provingPools } from '../../../simulation/proving-pool';
import { disagreements, errorsOff, provingResult } from '../../../simulation/proving-runs';
import { breaking } from '../../drills/breaking';
import { demoShop } from '../../drills/shop';
import { practised } from './practised';

const shop = demoShop();
const plan = defaultScheme.sequential;
const pools = provingPools(shop, 12);
const uneven = LEARNERS.find(({ name }) => name === 'uneven')!;

describe('a simulated proving drill', () => {
	it.each(STATIONS)('of %s is right and wrong where the program says so', (competency) => {
		let wrong = 0;
		for (let seed = 0; seed < 6; seed += 1) {
			const drill = makeProvingDrill({ seed, competency, shop })!;
			const rules = askedRules(drill, competency);
			const issued = { asked: [...drill.asked], ...toJournal({ job: drill.job, given: {} }, drill.plan) };
			const judged = (answers: Readonly<Record<string, Answer | undefined>>) => {
				const entries = Object.entries(answers).map(([id, answer]) => [id, { answer }]);
				return judge(issued, competency, Object.fromEntries(entries));
			};
			const right = rightAnswers(drill.plan);
			expect(judged(right).right).toBe(isRight(rules, () => false));
			for (const planned of drill.plan.fields.filter(({ field }) => drill.asked.includes(field)))
				for (const demand of planned.demands) {
					const answers = { ...right, [planned.field]: breaking(planned, demand)! };
					const { findings, ...sheet } = judged(answers);
					expect(findings).toContain(demand.rule);
					expect(isRight(rules, (rule) => findings.includes(rule))).toBe(sheet.right);
					if (!sheet.right) wrong += 1;
				}
		}
		expect(wrong).toBeGreaterThan(0);
	});

	it('has the same chance counted outcome by outcome and multiplied', () => {
		for (const { drills } of pools)
			for (const rules of drills)
				expect(chanceByCounting(rules, uneven)).toBeCloseTo(chanceByProduct(rules, uneven), 12);
		// by hand: two that count at 0.9, one that does not
		const rules: AskedRule[] = ['a', 'b', 'c'].map((rule) => ({ rule, counts: rule !== 'c' }));
		expect(chanceByCounting(rules, { name: '', keeps: () => 0.9 })).toBeCloseTo(0.81, 12);
	});
});

describe('exact and observed verdicts', () => {
	const runs = { runs: 400, seed: 11 };

	it.each(LEARNERS.map((learner) => [learner.name, learner] as const))('agree at %s', (_name, learner) => {
		for (const pool of pools) expect(disagreements(provingResult(plan, pool, learner, runs))).toEqual([]);
	});

	it('are told apart where they do not', () => {
		const [pool] = pools;
		const [better, worse] = [0.98, 0.97].map((chance) => ({ name: '', keeps: () => chance }));
		const { passed } = provingResult(plan, pool!, better!, runs);
		const other = provingResult(plan, pool!, worse!, runs);
		expect(errorsOff({ ...passed, observed: other.passed.observed })).toBeGreaterThan(4);
		expect(disagreements({ ...other, passed: { ...passed, observed: other.passed.observed } })).toEqual([
			'passed'
		]);
	});

	it('are of uneven people too: some rules of every competency are their weak ones', () => {
		for (const station of STATIONS)
			expect(
				RULES.some(({ id, competency }) => competency === station && uneven.keeps(id) < 0.9),
				station
			).toBe(true);
	});
});

describe('simulated practice', () => {
	const pool = practicePool(shop, 3);
	const few = { learners: 24, jobs: 12 };

	it.each(LEARNING_MODELS.map((model) => [model.name, model] as const))('teaches: %s', (_name, model) => {
		const { mean } = practiceResult(model, pool, few);
		expect(mean.adaptive.value).toBeGreaterThan(mean.before.value + 2 * mean.before.error);
		expect(mean.random.value).toBeGreaterThan(mean.before.value + 2 * mean.before.error);
		expect(mean.difference.value).toBeCloseTo(mean.adaptive.value - mean.random.value, 12);
	});

	it('is the same every time', () => {
		const [model] = LEARNING_MODELS;
		expect(practiceResult(model!, pool, few)).toEqual(practiceResult(model!, pool, few));
	});

	it('adds to a skill what the model says', () => {
		const job = practised('C7', true, 2);
		const logit = (chance: number) => Math.log(chance / (1 - chance));
		for (const { right, wrong } of LEARNING_MODELS) {
			const model = { name: '', right, wrong };
			// a mean of three logistic curves moves a little less than each of them
			const one = practiceLearner(3, model, ['C7', 'C8'], [templateOf(job)]);
			const before = [one.chanceIn('C7'), one.chanceIn('C8')];
			const { findings } = one.practise(job);
			expect(logit(one.chanceIn('C7'))).toBeGreaterThan(logit(before[0]!));
			expect(logit(one.chanceIn('C7')) - logit(before[0]!)).toBeCloseTo(findings.length ? wrong : right, 1);
			expect(one.chanceIn('C8')).toBe(before[1]);
		}
	});
});

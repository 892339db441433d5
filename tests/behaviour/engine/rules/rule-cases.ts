import { describe, expect, test } from 'vitest';
import type { Answer } from '../../../../src/lib/engine/grading/answer';
import { measure, type Measure } from '../../../../src/lib/engine/grading/measure';
import type { Job } from '../../../../src/lib/engine/job/job';
import { situation } from '../../../../src/lib/engine/plan/situation';
import { RULES } from '../../../../src/lib/engine/rules';
import type { Rule } from '../../../../src/lib/engine/rules/rule';
import type { Shop } from '../../../../src/lib/engine/shop/shop';
import { shop as usual } from './bench';

type Case = {
	/** What the case is about, as a sentence. */
	readonly name: string;
	readonly job: Job;
	readonly shop?: Shop;
	/** Answers the rule must let pass. */
	readonly passes: readonly Answer[];
	/** Answers it must find, with the direction it must name. */
	readonly fails: readonly (readonly [Answer, NonNullable<Measure['off']>])[];
};

const seen = (job: Job, shop: Shop) => {
	const found = situation(job, shop);
	if (!found) throw new Error(`no sheet ${job.coating}`);
	return found;
};

/** The battery every rule's test runs: where it speaks, what it lets pass, what it finds, where it is silent. */
export function ruleCases(rule: Rule, cases: readonly Case[], silentOn: readonly Job[] = []) {
	describe(rule.id, () => {
		test('stands in the list once', () => {
			expect(RULES.filter((one) => one === rule)).toHaveLength(1);
			expect(RULES.filter(({ id }) => id === rule.id)).toHaveLength(1);
		});
		test.each(cases)('$name', ({ job, shop = usual, passes, fails }) => {
			expect(passes.length * fails.length).toBeGreaterThan(0);
			const situation = seen(job, shop);
			expect(rule.applies(situation)).toBe(true);
			const expected = rule.expects(situation);
			for (const answer of passes)
				expect([answer, measure(answer, expected).zone]).toEqual([answer, 'green']);
			for (const [answer, off] of fails) {
				const found = measure(answer, expected);
				expect([answer, found.zone === 'green', found.off]).toEqual([answer, false, off]);
			}
		});
		if (silentOn.length)
			test.each(silentOn.map((job) => ({ job })))('is silent where it does not apply', ({ job }) => {
				expect(rule.applies(seen(job, usual))).toBe(false);
			});
	});
}

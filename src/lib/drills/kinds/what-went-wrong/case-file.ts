import { ruleById, testEnd, type Cause, type Expectation, type Plan } from '$lib/engine';
import type { CaseFile, CaseLine } from '../../figures/case-file';
import type { Random } from '../../random';
import type { Case } from './the-case';

/** Seeds of pictures as their addresses take them. */
const PICTURES = 999_999_999;

const SAYS: Partial<Record<Cause['fit'], CaseLine['says']>> = { recorded: 'broken', kept: 'kept' };

function expectationIn(plan: Plan, rule: string): Expectation {
	const demands = plan.fields.flatMap((planned) => planned.demands);
	const found = demands.find((demand) => demand.rule === rule);
	if (!found) throw new Error(`case-file: the plan demands nothing by ${rule}`);
	return found.expectation;
}

/** The case as it lies on the bench before any test, and after the best one. */
export function caseFiles(
	{ defect, causes, network, tests, best, positive, before, after, truth }: Case,
	plan: Plan,
	random: Random
): readonly [CaseFile, CaseFile] {
	const rulesOf = (id: string) => network.tests.find((test) => test.id === id)!.of;
	const file: CaseFile = {
		kind: 'case-file',
		panel: {
			defect,
			severity: random.pick([1, 2, 3] as const),
			seed: random.integer(0, PICTURES)
		},
		lines: causes.map(({ rule, fit, recorded }) => ({
			rule,
			field: ruleById(rule).field,
			says: SAYS[fit] ?? 'nothing',
			answer: recorded?.answer ?? null,
			expected: expectationIn(plan, rule),
			testEnds: testEnd(rule)
		})),
		result: null,
		told: {
			causes: causes.map(({ rule }) => ({
				rule,
				before: before[rule]!,
				after: after[rule]!,
				was: truth.includes(rule)
			})),
			tests: tests.map(({ id, bits }) => ({ rules: rulesOf(id), bits }))
		}
	};
	return [file, { ...file, result: { rules: rulesOf(best), broken: positive } }];
}

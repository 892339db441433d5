import { describe, expect, it } from 'vitest';
import { breached } from '../../../../src/lib/engine/grading/breached';
import { grade, rightAnswers } from '../../../../src/lib/engine/grading/grade';
import type { Answer, Answers } from '../../../../src/lib/engine/grading/answer';
import { exampleTickets } from '../../../../src/lib/engine/plan/example-tickets';
import { field, type FieldId } from '../../../../src/lib/engine/setup/fields';
import { limits } from '../../../../src/lib/engine/rules/expectation';
import { choice, choices, order, quantity, shop } from '../rules/bench';
import { invented as plan } from './invented-plan';

const right = rightAnswers(plan);
const rules = (given: Answers, asked?: readonly FieldId[]) =>
	breached(plan, given, asked).map(({ demand }) => demand.rule);

describe('what answers break', () => {
	it('is nothing where they are the plan’s own', () => {
		expect(breached(plan, right)).toEqual([]);
	});

	it('is each demand not met, with the field it stands in', () => {
		expect(breached(plan, { ...right, 'gun-distance': quantity(0.5) })).toEqual(
			plan.fields[1]!.demands.map((demand) => ({ field: 'gun-distance', demand }))
		);
	});

	it('is an amber one too', () => {
		expect(rules({ ...right, 'gun-distance': quantity(0.21) })).toEqual(['window']);
	});

	it('is all that is demanded of an empty field', () => {
		expect(rules({})).toEqual(['start', 'window', 'limit', 'air']);
	});

	it('is looked for in the fields asked, and in no others', () => {
		expect(rules({}, ['blow-off-pressure', 'coats'])).toEqual(['air']);
		expect(rules({}, [])).toEqual([]);
	});
});

/** Answers that meet, miss by little, miss by much, or are of another kind. */
function tried(id: FieldId, own: Answer, demand: Parameters<typeof limits>[0]): readonly Answer[] {
	const window = limits(demand);
	const { kind } = field(id);
	const near = window
		? [window.min, window.max].flatMap((limit) =>
				[1, 1 + 1e-10, 1 - 1e-10, 1.001, 0.999, 1.5, 0.5].map((by) => quantity(limit * by))
			)
		: [];
	const options = 'options' in demand ? demand.options : [];
	const picked = options.flatMap((option) =>
		kind === 'choice' ? [choice(option)] : [choices(option), choices(...options), order(...options)]
	);
	return [own, ...near, ...picked, choice('nothing of the kind'), choices(), order(), quantity(NaN)];
}

describe('what answers break and what they are graded', () => {
	/** Every ninth meets each sheet and most jobs. */
	const examples = exampleTickets(shop).filter((_, at) => at % 9 === 0);
	const cases = examples.flatMap(({ plan: example }) =>
		example.fields.flatMap(({ field: id, demands, answer }) =>
			demands.flatMap(({ expectation }) =>
				tried(id, answer, expectation).map((given) => ({ example, id, given }))
			)
		)
	);

	it('agree on every demand of the examples, met or missed', () => {
		const [differing, breaking] = [[] as string[], [] as string[]];
		for (const { example, id, given } of cases) {
			const broken = breached(example, { [id]: given }, [id]).map(({ demand }) => demand.rule);
			const graded = grade(example, { [id]: given }, [id]).breaches.map(({ rule }) => rule);
			if (broken.join() !== graded.join()) differing.push(`${id} ${JSON.stringify(given)}`);
			breaking.push(...graded);
		}
		expect(differing).toEqual([]);
		expect(cases.length).toBeGreaterThan(5_000);
		expect(breaking.length).toBeGreaterThan(cases.length / 4);
	});
});

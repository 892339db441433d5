import { describe, expect, test } from 'vitest';
import { field, METRIC, rightAnswers, ruleById, RULES, UNITS, type Answer, type FieldId } from '$lib/engine';
import { answerCheck, askable, exampleOf, LESSONS, type LessonCheck } from '$lib/lessons';
import type { Reader } from '$lib/paper';
import { demoShop, emptyShop } from './demo-shop';

const reader: Reader = { lang: 'en', units: METRIC };

function form(id: string, values: readonly string[]): FormData {
	const made = new FormData();
	for (const value of values) made.append(id, value);
	return made;
}

/** An answer as a browser posts it. */
function posted(id: FieldId, answer: Answer): FormData {
	const spec = field(id);
	if (answer.kind === 'choice') return form(id, [answer.option]);
	if (answer.kind !== 'quantity') return form(id, answer.options);
	if (spec.kind !== 'quantity') throw new Error(`${id} is no quantity`);
	const unit = UNITS[spec.dimension][0]!;
	return form(id, [`${unit.fromSi(answer.value)} ${unit.id}`]);
}

/** Answers nobody should get away with, one of which at least has to be wrong. */
function careless(id: FieldId): FormData[] {
	const spec = field(id);
	if (spec.kind === 'quantity') {
		const unit = UNITS[spec.dimension][0]!;
		return [form(id, [`0 ${unit.id}`]), form(id, [`9000 ${unit.id}`])];
	}
	const options = Object.keys(spec.options);
	if (spec.kind === 'choice') return options.map((option) => form(id, [option]));
	return [form(id, options), form(id, options.toReversed()), form(id, [])];
}

/** Lessons that gather what others teach. */
const TEACH_NO_RULE = ['defects', 'rework', 'cleaning-and-waste', 'bench-arithmetic'];

const cases = LESSONS.flatMap((lesson) =>
	lesson.checks.map((check) => [`${lesson.slug}: ${check.id}`, check, lesson.slug] as const)
);
const outcome = (check: LessonCheck, made: FormData) =>
	answerCheck(check, exampleOf(check, demoShop), made, reader)?.outcome;

describe.each(cases)('%s', (_name, check, slug) => {
	test('tests a rule that its lesson teaches, or any where it teaches none', () => {
		const { lesson } = ruleById(check.rule);
		if (RULES.some((rule) => rule.lesson.startsWith(`${slug}#`)))
			expect(lesson).toBe(`${slug}#${check.rule}`);
		else expect(TEACH_NO_RULE).toContain(slug);
	});

	test('can be answered right, and not by everything', () => {
		if (check.kind === 'reason') {
			const outcomes = Object.keys(check.options).map((key) => [key, outcome(check, form('reason', [key]))]);
			expect(outcomes.filter(([, one]) => one === 'right')).toEqual([[check.right, 'right']]);
			expect(outcomes.filter(([, one]) => one === 'wrong').length).toBeGreaterThanOrEqual(2);
			return;
		}
		const example = exampleOf(check, demoShop);
		expect(example?.id).toBe(check.example ?? example?.id);
		const id = ruleById(check.rule).field;
		expect(outcome(check, posted(id, rightAnswers(example!.plan)[id]!))).toBe('right');
		expect(careless(id).map((made) => outcome(check, made))).toContain('wrong');
	});
});

test.each(LESSONS.map((lesson) => [lesson.slug, lesson] as const))(
	'%s mixes at least four',
	(_slug, { checks }) => {
		expect(checks.length).toBeGreaterThanOrEqual(4);
		expect(new Set(checks.map(({ kind }) => kind)).size).toBe(2);
	}
);

test('reasons are not always the same one in the list', () => {
	const places = LESSONS.flatMap(({ checks }) => checks).flatMap((check) =>
		check.kind === 'reason' ? [Object.keys(check.options).indexOf(check.right)] : []
	);
	const most = Math.max(...[0, 1, 2].map((place) => places.filter((one) => one === place).length));
	expect(most).toBeLessThanOrEqual(places.length / 2);
});

describe('an answer', () => {
	const quantity: LessonCheck = { id: 'q', rule: 'blast-pressure', kind: 'field', example: 'steel-plates' };
	const order: LessonCheck = { id: 'o', rule: 'preparation-order', kind: 'field' };
	const example = exampleOf(quantity, demoShop)!;

	test('that cannot be read keeps what was typed and is no try', () => {
		const result = answerCheck(quantity, example, form('blast-pressure', ['four']), reader);
		expect(result).toMatchObject({ outcome: 'unread', entry: { typed: 'four' } });
	});

	test('left empty is no try', () => {
		expect(outcome(quantity, form('blast-pressure', ['']))).toBe('empty');
	});

	test('that is wrong comes back with the rule it breaks and the way it is off', () => {
		const result = answerCheck(quantity, example, form('blast-pressure', ['9 bar']), reader);
		expect(result?.outcome).toBe('wrong');
		expect(result?.findings.map(({ rule, howFar }) => [rule.href, howFar])).toEqual([
			['/en/rules/blast-pressure', expect.stringContaining('too high')]
		]);
	});

	test('just outside the window is not right: amber earns nothing here', () => {
		expect(outcome(quantity, form('blast-pressure', ['5.1 bar']))).toBe('wrong');
		expect(outcome(quantity, form('blast-pressure', ['5 bar']))).toBe('right');
	});

	test('whose step was moved without JavaScript comes back in the new order and is no try', () => {
		const steps = ['degrease', 'water-break', 'mask', 'blast', 'blow-off', 'coat'];
		const made = form('preparation-order', steps);
		made.set('move', 'preparation-order:coat:up');
		expect(answerCheck(order, exampleOf(order, demoShop), made, reader)).toMatchObject({
			outcome: 'open',
			entry: { answer: { options: ['degrease', 'water-break', 'mask', 'blast', 'coat', 'blow-off'] } }
		});
	});

	test.each([
		['an option that does not exist', form('blast-media', ['moon-dust'])],
		['two answers to one choice', form('blast-media', ['garnet', 'scuff'])]
	])('with %s is refused', (_what, made) => {
		const check: LessonCheck = { id: 'm', rule: 'media-suits-metal', kind: 'field' };
		expect(answerCheck(check, exampleOf(check, demoShop), made, reader)).toBeUndefined();
	});

	test('to a reason that does not exist is refused, names every object has included', () => {
		const reason = LESSONS[0]!.checks.find(({ kind }) => kind === 'reason')!;
		for (const key of ['moon', 'constructor', '__proto__'])
			expect(answerCheck(reason, undefined, form('reason', [key]), reader)).toBeUndefined();
	});
});

test('a shop without sheets is asked the reasons only', () => {
	for (const { checks } of LESSONS)
		expect(askable(checks, emptyShop)).toEqual(checks.filter(({ kind }) => kind === 'reason'));
});

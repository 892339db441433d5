import { describe, expect, it } from 'vitest';
import type { DataSheet } from '../../../../src/lib/engine/coatings/sheet';
import { DEMO_SHEETS } from '../../../../src/lib/engine/coatings/sheets';
import { grade, rightAnswers } from '../../../../src/lib/engine/grading/grade';
import { measure } from '../../../../src/lib/engine/grading/measure';
import type { Job } from '../../../../src/lib/engine/job/job';
import type { Plan } from '../../../../src/lib/engine/plan/plan';
import { solve } from '../../../../src/lib/engine/plan/solve';
import { ruleById } from '../../../../src/lib/engine/rules';
import { field } from '../../../../src/lib/engine/setup/fields';
import type { Shop } from '../../../../src/lib/engine/shop/shop';
import { SUBSTRATES, substrate, type SubstrateId } from '../../../../src/lib/engine/substrates/substrates';
import { celsius, micrometres } from '../../../../src/lib/engine/units/construct';
import { ENGINE_VERSION } from '../../../../src/lib/engine/version';
import { job, part, shop } from '../rules/bench';

const planned = (plan: Plan, id: string) => plan.fields.find((one) => one.field === id);
const of = (material: SubstrateId, over: Parameters<typeof part>[0] = {}) =>
	job({ parts: [part({ material, magnetSticks: substrate(material).magnetic === true, ...over })] });

describe('a job that can be done', () => {
	const plan = solve(job(), shop);

	it('is accepted and planned through every station', () => {
		expect(plan).toMatchObject({ engine: ENGINE_VERSION, decision: 'accept', reasons: [], conflicts: [] });
		const stations = new Set(
			plan.fields
				.map((one) => field(one.field))
				.filter(({ competency }) => competency !== 'safety')
				.map(({ station }) => station)
		);
		expect([...stations]).toEqual(expect.arrayContaining(['intake', 'preparation', 'curing']));
	});

	it('asks each field once and says what for', () => {
		const ids = plan.fields.map((one) => one.field);
		expect(new Set(ids).size).toBe(ids.length);
		for (const one of plan.fields) {
			expect(one.demands.length).toBeGreaterThan(0);
			for (const { rule, competency, severity } of one.demands)
				expect(ruleById(rule)).toMatchObject({ field: one.field, competency, severity });
		}
	});

	it('is plain data that survives being stored', () => {
		expect(JSON.parse(JSON.stringify(plan))).toEqual(plan);
	});
});

describe('a job that may not start', () => {
	it('is refused with every reason, and planned no further than the question', () => {
		const plan = solve(of('magnesium'), shop);
		expect(plan.decision).toBe('refuse');
		expect(plan.reasons).toEqual(['magnesium-refused', 'cure-within-part-limit']);
		expect(
			new Set(
				plan.fields
					.map((one) => field(one.field))
					.filter(({ competency }) => competency !== 'safety')
					.map(({ station }) => station)
			)
		).toEqual(new Set(['intake']));
	});

	it('is asked about with every reason, whoever each comes from', () => {
		const plan = solve(
			job({
				parts: [part({ fitted: ['bearing'], surface: 'old-coating' })],
				film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' }
			}),
			shop
		);
		expect(plan.decision).toBe('ask');
		expect(plan.reasons).toEqual([
			'old-coating-questioned',
			'fitted-items-out',
			'cure-within-part-limit',
			'film-basis-stated'
		]);
		expect(planned(plan, 'ask-about')?.answer).toEqual({
			kind: 'choices',
			options: ['heat', 'disassembly', 'old-coating', 'film-basis']
		});
		expect(planned(plan, 'decision')?.superseded).toEqual([]);
	});

	it('lets a danger be refused even where it would be asked', () => {
		const plan = solve(of('magnesium'), shop);
		const refused = grade(plan, { ...rightAnswers(plan), decision: { kind: 'choice', option: 'ask' } });
		expect(refused.result).toBe('clear');
		const accepted = grade(plan, { ...rightAnswers(plan), decision: { kind: 'choice', option: 'accept' } });
		expect(accepted.safetyStops.map(({ rule }) => rule)).toEqual(['magnesium-refused']);
	});
});

describe('limits that do not meet', () => {
	/** Sheet F as if it fumed below its own cure. */
	const fuming = DEMO_SHEETS.find(({ id }) => id === 'demo-f-catalysed') as DataSheet;
	const contradictory: Shop = {
		...shop,
		sheets: {
			...shop.sheets,
			[fuming.id]: {
				...fuming,
				lines: {
					...fuming.lines,
					'fume-above': [{ ...fuming.lines['fume-above']![0]!, value: 120 } as never]
				}
			}
		}
	};
	const plan = solve(job(), contradictory);

	it('make the plan ask, naming both', () => {
		expect(plan.decision).toBe('ask');
		expect(plan.reasons).toEqual(['windows-meet']);
		expect(plan.conflicts).toEqual([
			{ field: 'cure-temperature', rules: ['cure-part-temperature', 'below-fume-limit'] }
		]);
	});

	it('are themselves what there is to ask about', () => {
		expect(planned(plan, 'ask-about')?.answer).toEqual({ kind: 'choices', options: ['conflict'] });
		const found = grade(plan, { ...rightAnswers(plan), 'ask-about': { kind: 'choices', options: [] } });
		expect(found.breaches.map(({ rule }) => rule)).toEqual(['question-named']);
	});

	it('leave nothing past intake to work out, and accepting is found', () => {
		expect(
			new Set(
				plan.fields
					.map((one) => field(one.field))
					.filter(({ competency }) => competency !== 'safety')
					.map(({ station }) => station)
			)
		).toEqual(new Set(['intake']));
		const found = grade(plan, { ...rightAnswers(plan), decision: { kind: 'choice', option: 'accept' } });
		expect(found.breaches.map(({ rule }) => rule)).toEqual(['windows-meet']);
	});

	it('are not looked for where the job may not start anyway', () => {
		const stopped = solve(of('carbon-steel', { cavity: 'sealed' }), contradictory);
		expect(stopped).toMatchObject({ decision: 'refuse', conflicts: [], reasons: ['sealed-cavity-stops'] });
	});
});

describe('the answer key', () => {
	const jobs: readonly (readonly [string, Job])[] = DEMO_SHEETS.flatMap(({ id }) =>
		(Object.keys(SUBSTRATES) as SubstrateId[]).map(
			(material) =>
				[
					`${id} on ${material}`,
					{ ...of(material, { porous: true, blindHole: true, features: ['thread'] }), coating: id }
				] as const
		)
	);

	it.each(jobs)('grades clear: %s', (_name, one) => {
		const plan = solve(one, shop);
		expect(plan.conflicts).toEqual([]);
		for (const { answer, demands } of plan.fields)
			for (const { rule, expectation } of demands)
				expect([rule, measure(answer, expectation).zone]).toEqual([rule, 'green']);
		expect(grade(plan, rightAnswers(plan)).result).toBe('clear');
	});
});

describe('what a plan goes by', () => {
	it('is the customer before the shop: a written limit replaces that of the material', () => {
		expect(solve(of('aluminium-7075'), shop).decision).toBe('ask');
		const agreed = solve({ ...of('aluminium-7075'), writtenCap: celsius(150) }, shop);
		expect(agreed.decision).toBe('accept');
		const cure = planned(agreed, 'cure-temperature')?.answer;
		expect(cure?.kind === 'quantity' && cure.value).toBeCloseTo(celsius((145 + 150) / 2), 6);
	});

	it('is the shop’s own values where the shop has set them', () => {
		const own = { ...shop, settings: { 'cap.aluminium-7075': { from: '2026-01-01', value: celsius(150) } } };
		expect(solve(of('aluminium-7075'), own).decision).toBe('accept');
	});

	it('is a data sheet, without which nothing can be said', () => {
		expect(() => solve(job({ coating: 'no-such-sheet' }), shop)).toThrow(/no data sheet no-such-sheet/);
	});
});

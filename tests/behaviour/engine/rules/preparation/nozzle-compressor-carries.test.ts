import { expect, test } from 'vitest';
import type { Job } from '../../../../../src/lib/engine/job/job';
import type { Part } from '../../../../../src/lib/engine/job/part';
import { situation } from '../../../../../src/lib/engine/plan/situation';
import rule from '../../../../../src/lib/engine/rules/preparation/nozzle-compressor-carries';
import { cubicMetresPerHour, hours, percent } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part, shop } from '../bench';
import { ruleCases } from '../rule-cases';

type Nozzles = NonNullable<Job['bench']['nozzles']>;

const ALL: Nozzles = ['bore-3-2', 'bore-4-8', 'bore-6-4', 'bore-7-9', 'bore-9-5'];
const of = (
	delivery: number,
	nozzles: Nozzles = ALL,
	material: Part['material'] = 'carbon-steel',
	over: Partial<Job> = {}
) =>
	job({
		...over,
		parts: [part({ material, magnetSticks: material === 'carbon-steel' })],
		bench: { compressor: cubicMetresPerHour(delivery), nozzles }
	});

/*
 * By hand, at 5 bar: 0.78 of the air through 1/4 in is 105 m³/h, and others go by the square of the bore: 26, 59, 105,
 * 164, 236. Of that 70 % of the time, over 90 % that arrives, and a fifth more: 24, 55, 98, 153, 220 to be delivered.
 */
ruleCases(
	rule,
	[
		{
			name: 'steel at up to 5 bar, 60 m³/h: 3/16 in and narrower',
			job: of(60),
			passes: [choice('bore-4-8'), choice('bore-3-2')],
			fails: [
				[choice('bore-6-4'), 'wrong'],
				[choice('bore-9-5'), 'wrong'],
				[choice('none'), 'wrong']
			]
		},
		{
			name: 'aluminium at up to 3 bar: the same compressor has 1/4 in almost, and 70 m³/h has it',
			job: of(70, ALL, 'aluminium-6061'),
			passes: [choice('bore-6-4')],
			fails: [[choice('bore-7-9'), 'wrong']]
		},
		{
			name: 'zinc swept at 2 bar or less: 60 m³/h carry 1/4 in',
			job: of(60, ALL, 'zinc-die-cast'),
			passes: [choice('bore-6-4'), choice('bore-4-8')],
			fails: [[choice('bore-7-9'), 'wrong']]
		},
		{
			name: 'only wide nozzles on the shelf of a small compressor: nobody blasts with them',
			job: of(32, ['bore-7-9', 'bore-9-5']),
			passes: [choice('none')],
			fails: [[choice('bore-7-9'), 'wrong']]
		},
		{
			name: 'a nozzle that is carried but not on the shelf is no answer',
			job: of(130, ['bore-4-8']),
			passes: [choice('bore-4-8')],
			fails: [
				[choice('bore-6-4'), 'wrong'],
				[choice('none'), 'wrong']
			]
		},
		{
			name: 'a shop that blasts without a pause needs more for the same nozzle',
			job: of(60),
			shop: { ...shop, settings: { 'blast.duty': { from: '2026-01-01', value: percent(100) } } },
			passes: [choice('bore-3-2')],
			fails: [[choice('bore-4-8'), 'wrong']]
		}
	],
	[
		// a ticket of before this was asked for
		job(),
		job({ bench: { compressor: cubicMetresPerHour(60) } }),
		job({ bench: { nozzles: ALL } }),
		of(60, []),
		// nothing to blast
		of(60, ALL, 'anodised-aluminium'),
		of(60, ALL, 'carbon-steel', { blastedAgo: hours(1) })
	]
);

test('the widest that is carried comes first, and the next one up is shown beside it', () => {
	const expected = rule.expects(situation(of(100, ['bore-3-2', 'bore-9-5', 'bore-6-4']), shop)!);
	expect(expected).toMatchObject({ kind: 'one-of', options: ['bore-6-4', 'bore-3-2'] });
	if (expected.kind !== 'one-of') return;
	const [delivery, ...needs] = expected.because!;
	expect(delivery!.value * 3600).toBeCloseTo(100, 9);
	expect(needs.map(({ value }) => Math.round(value * 3600))).toEqual([220, 98]);
	expect(Object.keys(needs[0]!.inputs)).toEqual(['demand', 'duty', 'leak', 'reserve']);
	expect(Object.keys(needs[0]!.inputs.demand!.inputs)).toEqual(['bore', 'gauge', 'coefficient']);
});

import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/blast-to-coat-clock';
import { hours } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'steel: within 4 h',
			job: job(),
			passes: [quantity(hours(4)), quantity(hours(1))],
			fails: [
				[quantity(hours(4.25)), 'high'],
				[quantity(hours(65)), 'high']
			]
		},
		{
			name: 'brass tarnishes within the hour',
			job: of('brass'),
			passes: [quantity(hours(1))],
			fails: [[quantity(hours(4)), 'high']]
		},
		{
			name: 'brass and steel together: the shorter clock',
			job: job({ parts: [part(), part({ material: 'brass', magnetSticks: false })] }),
			passes: [quantity(hours(0.5))],
			fails: [[quantity(hours(4)), 'high']]
		}
	],
	[of('carbon-laminate'), of('unknown')]
);

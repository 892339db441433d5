import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/bake-out-time';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'a porous casting: 30 to 60 min',
			job: of('aluminium-casting', { porous: true }),
			passes: [quantity(minutes(30)), quantity(minutes(60))],
			fails: [
				[quantity(minutes(5)), 'low'],
				[quantity(minutes(120)), 'high']
			]
		}
	],
	[job(), of('aluminium-casting')]
);

import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/blast-stand-off';
import { millimetres } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: '100 to 200 mm',
			job: job(),
			passes: [quantity(millimetres(100)), quantity(millimetres(200))],
			fails: [
				[quantity(millimetres(50)), 'low'],
				[quantity(millimetres(400)), 'high']
			]
		}
	],
	[of('carbon-laminate')]
);

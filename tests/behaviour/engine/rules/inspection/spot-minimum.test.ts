import rule from '../../../../../src/lib/engine/rules/inspection/spot-minimum';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F starts at 15 µm: a spot may fall to 12 µm',
			job: job(),
			passes: [quantity(micrometres(12)), quantity(micrometres(12.2))],
			fails: [
				[quantity(micrometres(10)), 'low'],
				[quantity(micrometres(15)), 'high']
			]
		},
		{
			name: 'the drawing’s film outranks the sheet’s',
			job: job({ film: { min: micrometres(18), max: micrometres(24), basis: 'per-side' } }),
			passes: [quantity(micrometres(14.4))],
			fails: [[quantity(micrometres(12)), 'low']]
		}
	],
	[job({ film: { min: micrometres(18), max: micrometres(24), basis: 'unstated' } })]
);

import rule from '../../../../../src/lib/engine/rules/inspection/spot-maximum';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F ends at 25 µm: a spot may reach 30 µm',
			job: job(),
			passes: [quantity(micrometres(30))],
			fails: [
				[quantity(micrometres(35)), 'high'],
				[quantity(micrometres(25)), 'low']
			]
		},
		{
			name: 'the drawing’s film outranks the sheet’s',
			job: job({ film: { min: micrometres(18), max: micrometres(24), basis: 'per-side' } }),
			passes: [quantity(micrometres(28.8))],
			fails: [[quantity(micrometres(30)), 'high']]
		}
	],
	[job({ film: { min: micrometres(18), max: micrometres(24), basis: 'unstated' } })]
);

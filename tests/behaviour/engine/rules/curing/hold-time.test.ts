import rule from '../../../../../src/lib/engine/rules/curing/hold-time';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F holds metal for 60 to 72 min',
			job: job(),
			passes: [quantity(minutes(60)), quantity(minutes(72))],
			fails: [
				[quantity(minutes(45)), 'low'],
				[quantity(minutes(120)), 'high']
			]
		},
		{
			name: 'and polymers for 60 to 75 min',
			job: job({ parts: [part({ material: 'polyamide' })] }),
			passes: [quantity(minutes(75))],
			fails: [[quantity(minutes(30)), 'low']]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

import rule from '../../../../../src/lib/engine/rules/mixing/induction-kept';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet B wants 15 to 30 min',
			job: job({ coating: 'demo-b-amine-epoxy' }),
			passes: [quantity(minutes(15)), quantity(minutes(30))],
			fails: [
				[quantity(minutes(0)), 'low'],
				[quantity(minutes(60)), 'high']
			]
		},
		{
			name: 'sheet A wants none: waiting only costs pot life',
			job: job({ coating: 'demo-a-isocyanate' }),
			passes: [quantity(minutes(0))],
			fails: [[quantity(minutes(20)), 'high']]
		}
	],
	[job({ coating: 'demo-c-heat-cured-lubricant' })]
);

import rule from '../../../../../src/lib/engine/rules/inspection/rub-count-from-sheet';
import { count } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F asks 50 double rubs',
			job: job(),
			passes: [quantity(count(50))],
			fails: [
				[quantity(count(10)), 'low'],
				[quantity(count(100)), 'high']
			]
		},
		{
			name: 'sheet D asks 100',
			job: job({ coating: 'demo-d-high-bake' }),
			passes: [quantity(count(100))],
			fails: [[quantity(count(50)), 'low']]
		}
	],
	[job({ coating: 'demo-c-heat-cured-lubricant' })]
);

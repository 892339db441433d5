import rule from '../../../../../src/lib/engine/rules/mixing/hardener-by-weight';
import { grams } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '4:1 by volume weighs as 4.76:1; weighing 4:1 gives 19 % too much hardener',
			job: job({ coating: 'demo-a-isocyanate' }),
			passes: [quantity(grams(105)), quantity(grams(107))],
			fails: [
				[quantity(grams(125)), 'high'],
				[quantity(grams(90)), 'low']
			]
		},
		{
			name: 'a sheet that states weight is weighed as it stands',
			job: job({ coating: 'demo-b-amine-epoxy' }),
			passes: [quantity(grams(100))],
			fails: [
				[quantity(grams(140)), 'high'],
				[quantity(grams(71)), 'low']
			]
		}
	],
	[job({ coating: 'demo-d-high-bake' })]
);

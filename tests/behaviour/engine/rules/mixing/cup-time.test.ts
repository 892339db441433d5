import rule from '../../../../../src/lib/engine/rules/mixing/cup-time';
import { seconds } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F wants 30 to 40 s',
			job: job(),
			passes: [quantity(seconds(30)), quantity(seconds(40))],
			fails: [
				[quantity(seconds(15)), 'low'],
				[quantity(seconds(60)), 'high']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

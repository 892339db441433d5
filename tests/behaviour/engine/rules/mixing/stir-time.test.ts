import rule from '../../../../../src/lib/engine/rules/mixing/stir-time';
import { minutes, seconds } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet F wants 2 to 5 min',
			job: job(),
			passes: [quantity(minutes(2)), quantity(minutes(5))],
			fails: [
				[quantity(seconds(20)), 'low'],
				[quantity(minutes(15)), 'high']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

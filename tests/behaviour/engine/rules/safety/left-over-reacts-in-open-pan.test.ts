import rule from '../../../../../src/lib/engine/rules/safety/left-over-reacts-in-open-pan';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'no lid on reacting mix',
			job: job(),
			passes: [choice('open-pan')],
			fails: [
				[choice('closed-can'), 'wrong'],
				[choice('drain'), 'wrong']
			]
		}
	],
	[job({ coating: 'demo-d-high-bake' })]
);

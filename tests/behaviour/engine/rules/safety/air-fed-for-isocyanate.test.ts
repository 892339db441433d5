import rule from '../../../../../src/lib/engine/rules/safety/air-fed-for-isocyanate';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a filter mask “because it is quick” is a stop',
			job: job({ coating: 'demo-a-isocyanate' }),
			passes: [choice('air-fed')],
			fails: [
				[choice('half-mask'), 'wrong'],
				[choice('dust-mask'), 'wrong'],
				[choice('none'), 'wrong']
			]
		}
	],
	[job()]
);

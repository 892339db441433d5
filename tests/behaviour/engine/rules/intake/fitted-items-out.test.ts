import rule from '../../../../../src/lib/engine/rules/intake/fitted-items-out';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a greased bearing is still fitted',
			job: job({ parts: [part({ fitted: ['bearing'] })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'an ABS knob is bonded inside',
			job: job({ parts: [part(), part({ fitted: ['bonded-abs-knob'] })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[job()]
);

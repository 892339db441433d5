import rule from '../../../../../src/lib/engine/rules/intake/accept-when-clear';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'an ordinary job has nothing to ask',
			job: job(),
			passes: [choice('accept')],
			fails: [
				[choice('ask'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[
		job({ parts: [part({ material: 'unknown' })] }),
		job({ parts: [part({ fitted: ['magnet'] })] }),
		job({ parts: [part({ cavity: 'sealed' })] })
	]
);

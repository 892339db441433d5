import rule from '../../../../../src/lib/engine/rules/preparation/blind-hole-down';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a blind hole that came pointing up',
			job: job({ parts: [part(), part({ blindHole: true })] }),
			passes: [choice('down')],
			fails: [
				[choice('up'), 'wrong'],
				[choice('any'), 'wrong']
			]
		}
	],
	[job()]
);

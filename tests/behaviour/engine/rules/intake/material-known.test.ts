import rule from '../../../../../src/lib/engine/rules/intake/material-known';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a heavy-ish light grey part the customer cannot name may be magnesium',
			job: job({ parts: [part({ material: 'unknown', magnetSticks: false })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		},
		{
			name: 'one unknown among known parts is enough',
			job: job({ parts: [part(), part({ material: 'unknown', magnetSticks: null })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[job()]
);

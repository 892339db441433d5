import rule from '../../../../../src/lib/engine/rules/intake/old-coating-questioned';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'coated by someone else',
			job: job({ parts: [part({ surface: 'old-coating' })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[job(), job({ parts: [part({ surface: 'yellow-plating' })] })]
);

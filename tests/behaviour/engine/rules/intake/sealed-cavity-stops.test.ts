import rule from '../../../../../src/lib/engine/rules/intake/sealed-cavity-stops';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a closed tube with a pinhole in the weld',
			job: job({ parts: [part({ shape: 'tube', cavity: 'sealed' })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[job(), job({ parts: [part({ shape: 'tube', cavity: 'vented' })] })]
);

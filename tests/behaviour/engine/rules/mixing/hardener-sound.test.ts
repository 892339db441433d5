import rule from '../../../../../src/lib/engine/rules/mixing/hardener-sound';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a bulged can with crystals on the lid is not used up',
			job: job({ shelf: { hardenerState: 'crystals' } }),
			passes: [choice('reject')],
			fails: [[choice('use'), 'wrong']]
		}
	],
	[job(), job({ coating: 'demo-c-heat-cured-lubricant', shelf: { hardenerState: 'crystals' } })]
);

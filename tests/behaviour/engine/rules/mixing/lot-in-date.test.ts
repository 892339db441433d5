import rule from '../../../../../src/lib/engine/rules/mixing/lot-in-date';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'hardener two months past its date looks fine and is rejected',
			job: job({ shelf: { hardenerExpires: '2026-09-25' } }),
			passes: [choice('reject')],
			fails: [
				[choice('use'), 'wrong'],
				[choice('warm'), 'wrong']
			]
		},
		{
			name: 'the base past its date by a day is rejected',
			job: job({ shelf: { expires: '2026-11-24' } }),
			passes: [choice('reject')],
			fails: [[choice('use'), 'wrong']]
		}
	],
	[
		job(),
		job({ shelf: { expires: '2026-11-25', hardenerExpires: '2026-11-25' } }),
		// a one-part coating has no hardener whose date could count
		job({ coating: 'demo-d-high-bake', shelf: { hardenerExpires: '2020-01-01' } })
	]
);

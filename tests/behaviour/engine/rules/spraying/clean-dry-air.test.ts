import rule from '../../../../../src/lib/engine/rules/spraying/clean-dry-air';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'only a faint oil ring',
			job: job({ bench: { blotter: 'oil-ring' } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: 'water drops',
			job: job({ bench: { blotter: 'wet' } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: 'not done today',
			job: job({ bench: { blotter: 'not-done' } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		}
	],
	[job()]
);

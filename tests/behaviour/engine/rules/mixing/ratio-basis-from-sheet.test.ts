import rule from '../../../../../src/lib/engine/rules/mixing/ratio-basis-from-sheet';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet A states its ratio by volume',
			job: job({ coating: 'demo-a-isocyanate' }),
			passes: [choice('volume')],
			fails: [[choice('weight'), 'wrong']]
		},
		{
			name: 'sheet B states its ratio by weight',
			job: job({ coating: 'demo-b-amine-epoxy' }),
			passes: [choice('weight')],
			fails: [[choice('volume'), 'wrong']]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

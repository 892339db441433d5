import rule from '../../../../../src/lib/engine/rules/mixing/named-thinner-only';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet A names the ester blend',
		job: job({ coating: 'demo-a-isocyanate' }),
		passes: [choice('ester-blend')],
		fails: [
			// alcohol reacts with the isocyanate
			[choice('alcohol'), 'wrong'],
			[choice('ketone'), 'wrong']
		]
	},
	{
		name: 'sheet D allows none',
		job: job({ coating: 'demo-d-high-bake' }),
		passes: [choice('none')],
		fails: [[choice('ketone'), 'wrong']]
	}
]);

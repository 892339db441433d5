import rule from '../../../../../src/lib/engine/rules/safety/breathing-while-mixing';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'isocyanate: vapour cartridges at least',
		job: job({ coating: 'demo-a-isocyanate' }),
		passes: [choice('half-mask'), choice('air-fed')],
		fails: [
			[choice('none'), 'wrong'],
			[choice('dust-mask'), 'wrong']
		]
	},
	{
		name: 'other solvent under proven exhaust: none, but never a dust mask',
		job: job(),
		passes: [choice('none'), choice('half-mask')],
		fails: [[choice('dust-mask'), 'wrong']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/safety/breathing-for-solvent-mist';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'cartridges for vapour and mist, or air',
			job: job(),
			passes: [choice('half-mask'), choice('air-fed')],
			fails: [
				[choice('dust-mask'), 'wrong'],
				[choice('none'), 'wrong']
			]
		},
		{
			name: 'no tight mask over a beard',
			job: job({ wearer: { beard: true } }),
			passes: [choice('air-fed')],
			fails: [[choice('half-mask'), 'wrong']]
		},
		{
			name: 'no tight mask without a fit test',
			job: job({ wearer: { fitTestValid: false } }),
			passes: [choice('air-fed')],
			fails: [[choice('half-mask'), 'wrong']]
		}
	],
	[job({ coating: 'demo-a-isocyanate' })]
);

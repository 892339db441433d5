import rule from '../../../../../src/lib/engine/rules/intake/growth-on-diameter';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const bar = part({ shape: 'bar' });

ruleCases(
	rule,
	[
		{
			name: 'the sheet’s 25 µm per side are 50 µm on a diameter',
			job: job({ parts: [bar] }),
			passes: [quantity(micrometres(50)), quantity(micrometres(51))],
			fails: [
				[quantity(micrometres(25)), 'low'],
				[quantity(micrometres(100)), 'high']
			]
		},
		{
			name: 'a drawing of 20 µm at most makes it 40 µm',
			job: job({ parts: [bar], film: { min: micrometres(15), max: micrometres(20), basis: 'per-side' } }),
			passes: [quantity(micrometres(40))],
			fails: [
				[quantity(micrometres(20)), 'low'],
				[quantity(micrometres(50)), 'high']
			]
		}
	],
	[job(), job({ parts: [bar], film: { min: micrometres(15), max: micrometres(20), basis: 'unstated' } })]
);

import rule from '../../../../../src/lib/engine/rules/intake/tape-stands-the-oven';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part, shop } from '../bench';
import { ruleCases } from '../rule-cases';

const threaded = (material: 'carbon-steel' | 'abs') => [part({ material, features: ['thread'] })];

ruleCases(
	rule,
	[
		{
			name: 'paper tape of 120 °C does not go through a bake of 155 °C',
			job: job({ parts: threaded('carbon-steel') }),
			passes: [choice('polyester'), choice('polyimide')],
			fails: [[choice('paper'), 'wrong']]
		},
		{
			name: 'a shop whose polyester tape stands less',
			job: job({ parts: threaded('carbon-steel') }),
			shop: { ...shop, settings: { 'tape.polyester': { from: '2026-01-01', value: celsius(150) } } },
			passes: [choice('polyimide')],
			fails: [[choice('polyester'), 'wrong']]
		}
	],
	[job()]
);

import rule from '../../../../../src/lib/engine/rules/safety/below-fume-limit';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a 250 °C cure set as 482 on a °C oven fumes',
			job: job({ coating: 'demo-d-high-bake' }),
			passes: [quantity(celsius(250)), quantity(celsius(339))],
			fails: [
				[quantity(celsius(482)), 'high'],
				[quantity(celsius(340)), 'high']
			]
		}
	],
	[job({ coating: 'demo-b-amine-epoxy' }), job({ coating: 'demo-e-air-cured' })]
);

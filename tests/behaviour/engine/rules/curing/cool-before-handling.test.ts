import rule from '../../../../../src/lib/engine/rules/curing/cool-before-handling';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'hands and gauges wait for 40 °C',
			job: job(),
			passes: [quantity(celsius(40)), quantity(celsius(25))],
			fails: [[quantity(celsius(60)), 'high']]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

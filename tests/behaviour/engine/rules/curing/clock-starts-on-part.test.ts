import rule from '../../../../../src/lib/engine/rules/curing/clock-starts-on-part';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'display at 150 °C is not the part at 150 °C',
			job: job(),
			passes: [choice('part')],
			fails: [
				[choice('air'), 'wrong'],
				[choice('door'), 'wrong']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

import rule from '../../../../../src/lib/engine/rules/spraying/air-in-window';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '17 °C is below the window of sheet F',
			job: job({ weather: { air: celsius(17) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: '30 °C is above it',
			job: job({ weather: { air: celsius(30) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		}
	],
	[job(), job({ weather: { air: celsius(28) } })]
);

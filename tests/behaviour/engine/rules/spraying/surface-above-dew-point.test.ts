import rule from '../../../../../src/lib/engine/rules/spraying/surface-above-dew-point';
import { celsius, percent } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a part at 9 °C from a cold truck in air of 22 °C and 60 %: dew point 13.9 °C',
			job: job({ weather: { air: celsius(22), humidity: percent(60), part: celsius(9) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: 'above the dew point but inside the margin is still no-go',
			job: job({ weather: { air: celsius(22), humidity: percent(60), part: celsius(16) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		}
	],
	[job(), job({ weather: { air: celsius(22), humidity: percent(60), part: celsius(17) } })]
);

import rule from '../../../../../src/lib/engine/rules/spraying/humidity-in-window';
import { percent } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '76 % is above the 70 % of sheet F',
			job: job({ weather: { humidity: percent(76) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: '68 % is too much for sheet A, whose hardener foams',
			job: job({ coating: 'demo-a-isocyanate', weather: { humidity: percent(68) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: 'a room at 36 % stalls sheet E, which needs some moisture',
			job: job({ coating: 'demo-e-air-cured', weather: { humidity: percent(36) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		}
	],
	[job(), job({ weather: { humidity: percent(70) } })]
);

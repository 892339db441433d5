import rule from '../../../../../src/lib/engine/rules/spraying/go-when-clear';
import { celsius, percent } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'air, part and weather in order',
			job: job(),
			passes: [choice('go')],
			fails: [[choice('no-go'), 'wrong']]
		}
	],
	[
		job({ weather: { part: celsius(9) } }),
		job({ weather: { humidity: percent(80) } }),
		job({ weather: { air: celsius(32) } }),
		job({ weather: { part: celsius(45) } }),
		job({ bench: { blotter: 'oil-ring' } })
	]
);

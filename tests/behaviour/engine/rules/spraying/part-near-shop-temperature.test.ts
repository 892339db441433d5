import rule from '../../../../../src/lib/engine/rules/spraying/part-near-shop-temperature';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a part at 15 °C',
			job: job({ weather: { part: celsius(15) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		},
		{
			name: 'a part still at 45 °C from the bake-out',
			job: job({ weather: { part: celsius(45) } }),
			passes: [choice('no-go')],
			fails: [[choice('go'), 'wrong']]
		}
	],
	[job(), job({ weather: { part: celsius(18) } }), job({ weather: { part: celsius(30) } })]
);

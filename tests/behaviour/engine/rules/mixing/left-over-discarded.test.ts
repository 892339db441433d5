import rule from '../../../../../src/lib/engine/rules/mixing/left-over-discarded';
import { celsius, hours, minutes } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'mix of this morning has thickened: thinner does not bring it back',
			job: job({ coating: 'demo-a-isocyanate', shelf: { leftOverAge: hours(5) } }),
			passes: [choice('discard')],
			fails: [
				[choice('thin'), 'wrong'],
				[choice('use'), 'wrong']
			]
		},
		{
			name: 'half an hour old: used or discarded, but not thinned',
			job: job({ coating: 'demo-a-isocyanate', shelf: { leftOverAge: minutes(30) } }),
			passes: [choice('use'), choice('discard')],
			fails: [[choice('thin'), 'wrong']]
		},
		{
			name: 'two hours would do at 21 °C but not in paint at 31 °C',
			job: job({
				coating: 'demo-a-isocyanate',
				shelf: { leftOverAge: hours(2) },
				weather: { paint: celsius(31) }
			}),
			passes: [choice('discard')],
			fails: [[choice('use'), 'wrong']]
		},
		{
			name: 'where no pot life can be told, old mix is not trusted',
			job: job({ shelf: { leftOverAge: minutes(30) }, weather: { paint: celsius(48) } }),
			passes: [choice('discard')],
			fails: [[choice('use'), 'wrong']]
		}
	],
	[job(), job({ coating: 'demo-d-high-bake', shelf: { leftOverAge: hours(5) } })]
);

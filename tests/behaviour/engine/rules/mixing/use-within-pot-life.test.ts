import rule from '../../../../../src/lib/engine/rules/mixing/use-within-pot-life';
import { celsius, minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity, shop } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'at the temperature of the sheet: up to three quarters of 3 h',
			job: job({ coating: 'demo-a-isocyanate', weather: { paint: celsius(21) } }),
			passes: [quantity(minutes(90)), quantity(minutes(135))],
			fails: [
				[quantity(minutes(180)), 'high'],
				[quantity(minutes(20)), 'low']
			]
		},
		{
			name: 'paint 10 °C warmer has half the time',
			job: job({ coating: 'demo-a-isocyanate', weather: { paint: celsius(31) } }),
			passes: [quantity(minutes(45)), quantity(minutes(67.5))],
			fails: [
				[quantity(minutes(135)), 'high'],
				[quantity(minutes(10)), 'low']
			]
		},
		{
			name: 'a shop that wants more reserve sets the share',
			job: job({ coating: 'demo-a-isocyanate', weather: { paint: celsius(21) } }),
			shop: { ...shop, settings: { 'mix.pot-life-share': { from: '2026-01-01', min: 0.2, max: 0.5 } } },
			passes: [quantity(minutes(90))],
			fails: [[quantity(minutes(100)), 'high']]
		}
	],
	[
		job({ coating: 'demo-d-high-bake' }),
		// colder than the rule of thumb holds for
		job({ weather: { paint: celsius(-10) } })
	]
);

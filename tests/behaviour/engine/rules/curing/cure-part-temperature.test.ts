import rule from '../../../../../src/lib/engine/rules/curing/cure-part-temperature';
import { celsius, fahrenheit } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'metal on sheet F cures at 145 to 155 °C part temperature',
			job: job(),
			passes: [quantity(celsius(145)), quantity(celsius(155)), quantity(fahrenheit(302))],
			fails: [
				[quantity(celsius(130)), 'low'],
				[quantity(celsius(156)), 'high']
			]
		},
		{
			name: '300 °F on the sheet is not 300 °C on the oven',
			job: job(),
			passes: [quantity(fahrenheit(300))],
			fails: [[quantity(celsius(300)), 'high']]
		},
		{
			name: 'one plastic part on the ticket: the polymer cure of the sheet holds',
			job: job({ parts: [part(), part({ material: 'polycarbonate' })] }),
			passes: [quantity(celsius(85))],
			fails: [[quantity(celsius(150)), 'high']]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

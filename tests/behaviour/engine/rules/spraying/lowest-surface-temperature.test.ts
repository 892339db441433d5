import rule from '../../../../../src/lib/engine/rules/spraying/lowest-surface-temperature';
import { celsius, percent } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'air of 22 °C and 60 %: dew point 13.9 °C and 3 °C',
		job: job({ weather: { air: celsius(22), humidity: percent(60) } }),
		passes: [quantity(celsius(16.9)), quantity(celsius(17)), quantity(celsius(18))],
		fails: [
			// the dew point itself
			[quantity(celsius(13.9)), 'low'],
			[quantity(celsius(16.7)), 'low'],
			[quantity(celsius(22)), 'high']
		]
	},
	{
		name: 'air of 30 °C and 80 %: dew point 26.2 °C and 3 °C',
		job: job({ weather: { air: celsius(30), humidity: percent(80) } }),
		passes: [quantity(celsius(29.2))],
		fails: [
			[quantity(celsius(26)), 'low'],
			[quantity(celsius(35)), 'high']
		]
	}
]);

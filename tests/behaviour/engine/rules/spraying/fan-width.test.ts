import rule from '../../../../../src/lib/engine/rules/spraying/fan-width';
import { millimetres } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const wide = (width: number) => part({ width: millimetres(width) });

ruleCases(rule, [
	{
		name: 'a plate 80 mm wide: 96 to 120 mm',
		job: job(),
		passes: [quantity(millimetres(96)), quantity(millimetres(120))],
		fails: [
			[quantity(millimetres(60)), 'low'],
			[quantity(millimetres(150)), 'high']
		]
	},
	{
		name: 'a panel wider than the gun’s fan takes its widest',
		job: job({ parts: [wide(400)] }),
		passes: [quantity(millimetres(120)), quantity(millimetres(150))],
		fails: [
			[quantity(millimetres(60)), 'low'],
			[quantity(millimetres(400)), 'high']
		]
	},
	{
		name: 'a pin narrower than the gun’s fan takes its narrowest',
		job: job({ parts: [wide(10)] }),
		passes: [quantity(millimetres(50)), quantity(millimetres(60))],
		fails: [
			[quantity(millimetres(15)), 'low'],
			[quantity(millimetres(150)), 'high']
		]
	},
	{
		name: 'of two sorts the narrower decides',
		job: job({ parts: [wide(80), wide(60)] }),
		passes: [quantity(millimetres(80))],
		fails: [[quantity(millimetres(120)), 'high']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/spraying/gun-distance';
import { millimetres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet F is silent: 75 to 150 mm for a small gun',
		job: job(),
		passes: [quantity(millimetres(75)), quantity(millimetres(150))],
		fails: [
			[quantity(millimetres(40)), 'low'],
			[quantity(millimetres(300)), 'high']
		]
	},
	{
		name: 'sheet C wants 100 mm at least',
		job: job({ coating: 'demo-c-heat-cured-lubricant' }),
		passes: [quantity(millimetres(100))],
		fails: [[quantity(millimetres(80)), 'low']]
	}
]);

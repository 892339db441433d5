import rule from '../../../../../src/lib/engine/rules/spraying/number-of-coats';
import { count } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet C wants two or three',
		job: job({ coating: 'demo-c-heat-cured-lubricant' }),
		passes: [quantity(count(2)), quantity(count(3))],
		fails: [
			[quantity(count(1)), 'low'],
			[quantity(count(5)), 'high']
		]
	}
]);

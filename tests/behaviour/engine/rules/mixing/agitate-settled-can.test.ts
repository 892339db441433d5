import rule from '../../../../../src/lib/engine/rules/mixing/agitate-settled-can';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet C wants 10 to 20 min',
		job: job({ coating: 'demo-c-heat-cured-lubricant' }),
		passes: [quantity(minutes(10)), quantity(minutes(20))],
		fails: [
			[quantity(minutes(1)), 'low'],
			[quantity(minutes(60)), 'high']
		]
	}
]);

import rule from '../../../../../src/lib/engine/rules/preparation/water-break-whole-minute';
import { minutes, seconds } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'a break within the minute fails',
		job: job(),
		passes: [quantity(seconds(60)), quantity(minutes(2))],
		fails: [
			[quantity(seconds(59)), 'low'],
			[quantity(seconds(5)), 'low']
		]
	}
]);

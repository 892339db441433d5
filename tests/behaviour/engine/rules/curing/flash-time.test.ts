import rule from '../../../../../src/lib/engine/rules/curing/flash-time';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'the window of sheet F is 15 to 30 min',
		job: job(),
		passes: [quantity(minutes(15)), quantity(minutes(30))],
		fails: [
			[quantity(minutes(3)), 'low'],
			[quantity(minutes(45)), 'high']
		]
	}
]);

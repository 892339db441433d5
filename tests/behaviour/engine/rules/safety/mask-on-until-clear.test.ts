import rule from '../../../../../src/lib/engine/rules/safety/mask-on-until-clear';
import { minutes } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'the time measured in this booth, not a moment to look at the gloss',
		job: job({ coating: 'demo-a-isocyanate' }),
		passes: [quantity(minutes(5)), quantity(minutes(30))],
		fails: [
			[quantity(minutes(1)), 'low'],
			[quantity(0), 'low']
		]
	},
	{
		name: 'a slow room asks more',
		job: job({ bench: { clearance: minutes(20) } }),
		passes: [quantity(minutes(20))],
		fails: [[quantity(minutes(5)), 'low']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/spraying/pass-overlap';
import { percent } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'half, give or take a tenth',
		job: job(),
		passes: [quantity(percent(40)), quantity(percent(60))],
		fails: [
			[quantity(percent(10)), 'low'],
			[quantity(percent(85)), 'high']
		]
	}
]);

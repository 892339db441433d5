import rule from '../../../../../src/lib/engine/rules/inspection/cross-cut-class';
import { count } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet F passes class 1; 4 is not good adhesion on this scale',
		job: job(),
		passes: [quantity(count(1))],
		fails: [
			[quantity(count(4)), 'high'],
			[quantity(count(2)), 'high'],
			[quantity(count(0)), 'low']
		]
	}
]);

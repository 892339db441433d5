import rule from '../../../../../src/lib/engine/rules/spraying/pressure-at-the-cap';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'the gauge on the handle is not the cap',
		job: job(),
		passes: [choice('cap')],
		fails: [
			[choice('handle'), 'wrong'],
			[choice('wall'), 'wrong']
		]
	}
]);

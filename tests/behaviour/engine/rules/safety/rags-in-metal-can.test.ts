import rule from '../../../../../src/lib/engine/rules/safety/rags-in-metal-can';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'no open bin overnight',
		job: job(),
		passes: [choice('metal-can')],
		fails: [
			[choice('open-bin'), 'wrong'],
			[choice('bench'), 'wrong']
		]
	}
]);

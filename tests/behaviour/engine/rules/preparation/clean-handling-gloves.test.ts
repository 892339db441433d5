import rule from '../../../../../src/lib/engine/rules/preparation/clean-handling-gloves';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'a bare thumb on the blasted edge prints',
		job: job(),
		passes: [choice('powder-free-nitrile')],
		fails: [
			[choice('bare'), 'wrong'],
			[choice('powdered-latex'), 'wrong'],
			[choice('work-leather'), 'wrong']
		]
	}
]);

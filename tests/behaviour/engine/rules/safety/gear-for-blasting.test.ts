import rule from '../../../../../src/lib/engine/rules/safety/gear-for-blasting';
import { choices, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'all that the assessment lists; more is no breach',
		job: job(),
		passes: [choices('goggles', 'ear-protection'), choices('goggles', 'ear-protection', 'face-shield')],
		fails: [
			[choices('ear-protection'), 'low'],
			[choices(), 'low'],
			[choices('goggles', 'ear-protection', 'sandals'), 'high']
		]
	}
]);

import rule from '../../../../../src/lib/engine/rules/safety/gear-for-mixing';
import { choices, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'all that the assessment lists; more is no breach',
		job: job(),
		passes: [
			choices('goggles', 'nitrile-gloves', 'long-sleeves'),
			choices('goggles', 'nitrile-gloves', 'long-sleeves', 'face-shield')
		],
		fails: [
			[choices('goggles', 'long-sleeves'), 'low'],
			[choices(), 'low'],
			[choices('goggles', 'nitrile-gloves', 'long-sleeves', 'sandals'), 'high']
		]
	},
	{
		name: 'isocyanate hardener adds the face shield',
		job: job({ coating: 'demo-a-isocyanate' }),
		passes: [choices('goggles', 'face-shield', 'nitrile-gloves', 'long-sleeves')],
		fails: [[choices('goggles', 'nitrile-gloves', 'long-sleeves'), 'low']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/safety/gear-for-the-oven';
import { choices, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'all that the assessment lists; more is no breach',
			job: job(),
			passes: [
				choices('face-shield', 'heat-gloves', 'long-sleeves'),
				choices('face-shield', 'heat-gloves', 'long-sleeves', 'goggles')
			],
			fails: [
				[choices('heat-gloves'), 'low'],
				[choices(), 'low'],
				[choices('face-shield', 'heat-gloves', 'long-sleeves', 'sandals'), 'high']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

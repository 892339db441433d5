import rule from '../../../../../src/lib/engine/rules/safety/gear-for-spraying';
import { choices, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'all that the assessment lists; more is no breach',
		job: job(),
		passes: [
			choices('goggles', 'nitrile-gloves', 'hooded-suit'),
			choices('goggles', 'nitrile-gloves', 'hooded-suit', 'long-sleeves')
		],
		fails: [
			[choices('goggles', 'nitrile-gloves'), 'low'],
			[choices(), 'low'],
			[choices('goggles', 'nitrile-gloves', 'hooded-suit', 'sandals'), 'high']
		]
	},
	{
		name: 'under an air-fed hood the eyes are covered',
		job: job({ coating: 'demo-a-isocyanate' }),
		passes: [choices('nitrile-gloves', 'hooded-suit')],
		fails: [[choices('nitrile-gloves'), 'low']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/safety/gear-for-degreasing';
import { choices, job, shop } from '../bench';
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
			[choices('goggles'), 'low'],
			[choices(), 'low'],
			[choices('goggles', 'nitrile-gloves', 'long-sleeves', 'sandals'), 'high']
		]
	},
	{
		name: 'the shop’s own assessment governs',
		job: job(),
		shop: { ...shop, settings: { 'gear.degrease.face-shield': { from: '2026-01-01', value: 1 } } },
		passes: [choices('goggles', 'face-shield', 'nitrile-gloves', 'long-sleeves')],
		fails: [[choices('goggles', 'nitrile-gloves', 'long-sleeves'), 'low']]
	}
]);

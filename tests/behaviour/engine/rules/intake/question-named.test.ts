import rule from '../../../../../src/lib/engine/rules/intake/question-named';
import { choices, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'nothing to ask: every topic is one too many',
		job: job(),
		passes: [choices()],
		fails: [
			[choices('material'), 'wrong'],
			[choices('conflict'), 'wrong']
		]
	},
	{
		name: 'a sealed tube with a bearing: both are named, and nothing without ground',
		job: job({ parts: [part({ cavity: 'sealed', fitted: ['bearing'] })] }),
		passes: [choices('cavity', 'disassembly', 'heat'), choices('heat', 'disassembly', 'cavity', 'conflict')],
		fails: [
			[choices('cavity', 'disassembly'), 'low'],
			[choices(), 'low'],
			[choices('cavity', 'disassembly', 'heat', 'film-basis'), 'high']
		]
	},
	{
		name: 'with the material unknown its limits may be asked as well',
		job: job({ parts: [part({ material: 'unknown', magnetSticks: null })] }),
		passes: [choices('material'), choices('material', 'fire', 'heat')],
		fails: [
			[choices('fire', 'heat'), 'low'],
			[choices('material', 'cavity'), 'high']
		]
	}
]);

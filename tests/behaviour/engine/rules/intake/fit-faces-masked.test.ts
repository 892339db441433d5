import rule from '../../../../../src/lib/engine/rules/intake/fit-faces-masked';
import { choices, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'a thread and a bearing seat that the list leaves out are masked all the same',
		job: job({ parts: [part({ features: ['thread', 'bearing-seat'], masked: ['thread'] })] }),
		passes: [choices('thread', 'bearing-seat')],
		fails: [
			[choices('thread'), 'low'],
			[choices(), 'low'],
			[choices('thread', 'bearing-seat', 'datum'), 'high']
		]
	},
	{
		name: 'the faces of all parts count',
		job: job({ parts: [part({ features: ['datum'] }), part({ features: ['sealing-face'] })] }),
		passes: [choices('sealing-face', 'datum')],
		fails: [[choices('datum'), 'low']]
	},
	{
		name: 'a part without fit faces is coated all over',
		job: job(),
		passes: [choices()],
		fails: [[choices('thread'), 'wrong']]
	}
]);

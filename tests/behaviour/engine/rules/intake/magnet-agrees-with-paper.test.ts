import rule from '../../../../../src/lib/engine/rules/intake/magnet-agrees-with-paper';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'declared stainless, but the magnet sticks: ferritic or plated',
			job: job({ parts: [part({ material: 'stainless-steel', magnetSticks: true })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'declared carbon steel, but the magnet falls off',
			job: job({ parts: [part({ magnetSticks: false })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[
		job(),
		job({ parts: [part({ material: 'stainless-steel', magnetSticks: false })] }),
		job({ parts: [part({ material: 'stainless-steel', magnetSticks: null })] }),
		job({ parts: [part({ material: 'unknown', magnetSticks: true })] }),
		job({ parts: [part({ material: 'abs', magnetSticks: true })] })
	]
);

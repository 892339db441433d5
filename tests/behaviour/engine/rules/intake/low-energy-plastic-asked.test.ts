import rule from '../../../../../src/lib/engine/rules/intake/low-energy-plastic-asked';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'polypropylene flakes however clean',
			job: job({ parts: [part({ material: 'polypropylene', magnetSticks: false })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[
		job(),
		job({ parts: [part({ material: 'polyamide', magnetSticks: false })] }),
		job({ parts: [part({ material: 'unknown' })] })
	]
);

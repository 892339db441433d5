import rule from '../../../../../src/lib/engine/rules/intake/magnesium-refused';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a magnesium cover',
			job: job({ parts: [part({ material: 'magnesium', magnetSticks: false })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[
		job(),
		job({ parts: [part({ material: 'unknown' })] }),
		job({ parts: [part({ material: 'titanium', magnetSticks: false })] })
	]
);

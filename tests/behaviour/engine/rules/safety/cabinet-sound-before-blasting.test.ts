import rule from '../../../../../src/lib/engine/rules/safety/cabinet-sound-before-blasting';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'torn seal, frosted window, rush job: repair first',
			job: job({ bench: { cabinet: 'torn-seal' } }),
			passes: [choice('repair')],
			fails: [
				[choice('dust-mask'), 'wrong'],
				[choice('blast'), 'wrong']
			]
		},
		{
			name: 'a sound cabinet is used',
			job: job(),
			passes: [choice('blast')],
			fails: [[choice('repair'), 'wrong']]
		},
		{
			name: 'anodising is blasted only with the customer’s yes',
			job: job({ blastingAgreed: true, parts: [part({ material: 'anodised-aluminium' })] }),
			passes: [choice('blast')],
			fails: [[choice('dust-mask'), 'wrong']]
		}
	],
	[
		job({ parts: [part({ material: 'anodised-aluminium' })] }),
		job({ parts: [part({ material: 'carbon-laminate' })] }),
		job({ parts: [part({ material: 'magnesium' })] }),
		job({ parts: [part({ material: 'unknown' })] })
	]
);

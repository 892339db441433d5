import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/scuff-instead-of-blasting';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'a blue dyed anodised housing',
			job: of('anodised-aluminium'),
			passes: [choice('scuff')],
			fails: [[choice('aluminium-oxide-fine'), 'wrong']]
		},
		{
			name: 'a glossy carbon-fibre panel',
			job: of('carbon-laminate'),
			passes: [choice('scuff')],
			fails: [
				[choice('plastic-media'), 'wrong'],
				[choice('glass-bead'), 'wrong']
			]
		},
		{
			name: 'one ABS cover among steel parts',
			job: job({ parts: [part(), part({ material: 'abs', magnetSticks: false })] }),
			passes: [choice('scuff')],
			fails: [[choice('aluminium-oxide-fine'), 'wrong']]
		}
	],
	[
		job(),
		of('unknown'),
		job({ parts: [part({ material: 'anodised-aluminium', magnetSticks: false })], blastingAgreed: true })
	]
);

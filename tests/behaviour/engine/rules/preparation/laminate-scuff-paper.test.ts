import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/laminate-scuff-paper';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'a glossy carbon-fibre panel to dull, no fibre exposed',
			job: of('carbon-laminate'),
			passes: [choice('p320'), choice('p400')],
			fails: [
				[choice('p80'), 'wrong'],
				[choice('p180'), 'wrong'],
				[choice('p1500'), 'wrong']
			]
		}
	],
	[job(), of('abs')]
);

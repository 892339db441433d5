import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/iron-free-media';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'steel grit in the cabinet, stainless on the ticket',
			job: of('stainless-steel'),
			passes: [choice('aluminium-oxide-fine'), choice('glass-bead')],
			fails: [[choice('steel-grit'), 'wrong']]
		},
		{
			name: 'also where steel grit is all there is',
			job: job({
				parts: [part({ material: 'aluminium-6061', magnetSticks: false })],
				bench: { media: ['steel-grit'] }
			}),
			passes: [choice('scuff')],
			fails: [[choice('steel-grit'), 'wrong']]
		}
	],
	[job(), of('glass-laminate')]
);

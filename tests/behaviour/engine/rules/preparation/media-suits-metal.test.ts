import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/media-suits-metal';
import { hours } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'steel under a thin film: fine aluminium oxide, not bead and not what is not there',
			job: job(),
			passes: [choice('aluminium-oxide-fine')],
			fails: [
				[choice('glass-bead'), 'wrong'],
				[choice('garnet'), 'wrong'],
				[choice('scuff'), 'wrong']
			]
		},
		{
			name: 'coarse grain digs too deep though it is in the cabinet',
			job: job({ bench: { media: ['aluminium-oxide-coarse', 'garnet'] } }),
			passes: [choice('garnet')],
			fails: [[choice('aluminium-oxide-coarse'), 'wrong']]
		},
		{
			name: 'nothing on the bench suits: by hand',
			job: job({ bench: { media: ['steel-grit', 'silica-sand'] } }),
			passes: [choice('scuff')],
			fails: [
				[choice('steel-grit'), 'wrong'],
				[choice('silica-sand'), 'wrong']
			]
		},
		{
			name: 'parts blasted too long ago are blasted again',
			job: job({ blastedAgo: hours(65) }),
			passes: [choice('aluminium-oxide-fine')],
			fails: [[choice('glass-bead'), 'wrong']]
		},
		{
			name: 'polyamide may be blasted or scuffed',
			job: of('polyamide'),
			passes: [choice('aluminium-oxide-fine'), choice('scuff')],
			fails: [[choice('glass-bead'), 'wrong']]
		},
		{
			name: 'steel and stainless together take what suits both',
			job: job({ parts: [part({ material: 'stainless-steel', magnetSticks: false }), part()] }),
			passes: [choice('aluminium-oxide-fine')],
			fails: [[choice('glass-bead'), 'wrong']]
		}
	],
	[of('carbon-laminate'), of('unknown'), job({ blastedAgo: hours(1) })]
);

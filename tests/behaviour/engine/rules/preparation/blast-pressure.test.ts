import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/blast-pressure';
import { bar, hours, psi } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity, shop } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'steel: 3 to 5 bar',
			job: job(),
			passes: [quantity(bar(3)), quantity(psi(60)), quantity(bar(5))],
			fails: [
				[quantity(bar(2)), 'low'],
				[quantity(bar(7)), 'high']
			]
		},
		{
			name: 'aluminium: 2 to 3 bar',
			job: of('aluminium-6061'),
			passes: [quantity(bar(2)), quantity(bar(3))],
			fails: [
				[quantity(bar(1)), 'low'],
				[quantity(bar(4)), 'high']
			]
		},
		{
			name: 'steel and aluminium together: the softer one sets the gauge',
			job: job({ parts: [part(), part({ material: 'aluminium-7075', magnetSticks: false })] }),
			passes: [quantity(bar(2.5))],
			fails: [[quantity(bar(4)), 'high']]
		},
		{
			name: 'zinc is swept at 2 bar or less',
			job: of('zinc-die-cast'),
			passes: [quantity(bar(1)), quantity(bar(2))],
			fails: [[quantity(bar(3)), 'high']]
		},
		{
			name: 'an anodised face only with the customer’s word, and at 1.5 bar or less',
			job: job({
				parts: [part({ material: 'anodised-aluminium', magnetSticks: false })],
				blastingAgreed: true
			}),
			passes: [quantity(bar(1.5))],
			fails: [[quantity(bar(2)), 'high']]
		},
		{
			name: 'a shop that has set its own window for steel',
			job: job(),
			shop: {
				...shop,
				settings: { 'blast.pressure.steel': { from: '2026-01-01', min: bar(2.5), max: bar(3.5) } }
			},
			passes: [quantity(bar(2.5))],
			fails: [[quantity(bar(5)), 'high']]
		}
	],
	[of('anodised-aluminium'), of('abs'), job({ blastedAgo: hours(1) }), job({ bench: { media: [] } })]
);

import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/wet-polymer-dried';
import { hours } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'nylon straight from a humid shelf: 2 to 4 h',
			job: of('polyamide', { humidStore: true }),
			passes: [quantity(hours(2)), quantity(hours(4))],
			fails: [
				[quantity(hours(0.2)), 'low'],
				[quantity(hours(12)), 'high']
			]
		}
	],
	[job(), of('polyamide'), of('peek', { humidStore: true })]
);

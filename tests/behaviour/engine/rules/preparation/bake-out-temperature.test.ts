import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/bake-out-temperature';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

const casting = (over: Partial<Part> = {}) => of('aluminium-casting', { porous: true, ...over });

ruleCases(
	rule,
	[
		{
			name: 'a casting under a cure of 155 °C at most: 165 to 175 °C',
			job: casting(),
			passes: [quantity(celsius(165)), quantity(celsius(175))],
			fails: [
				[quantity(celsius(150)), 'low'],
				[quantity(celsius(190)), 'high']
			]
		},
		{
			name: 'a part limit of 170 °C caps it',
			job: { ...casting(), writtenCap: celsius(170) },
			passes: [quantity(celsius(165)), quantity(celsius(170))],
			fails: [
				[quantity(celsius(175)), 'high'],
				[quantity(celsius(155)), 'low']
			]
		},
		{
			name: 'a limit at the cure itself leaves only the last degrees below it',
			job: { ...casting(), writtenCap: celsius(155) },
			passes: [quantity(celsius(150)), quantity(celsius(155))],
			fails: [
				[quantity(celsius(165)), 'high'],
				[quantity(celsius(140)), 'low']
			]
		}
	],
	[job(), { ...casting(), coating: 'demo-e-air-cured' }]
);

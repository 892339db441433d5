import rule from '../../../../../src/lib/engine/rules/safety/oven-solvent-load';
import { millilitres, litres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity, shop } from '../bench';
import { ruleCases } from '../rule-cases';

const sheet = shop.sheets['demo-f-catalysed']!;
const silent = {
	...shop,
	sheets: { silent: { ...sheet, lines: { ...sheet.lines, 'solvent-share': undefined } } }
};

ruleCases(
	rule,
	[
		{
			name: 'plate 60 mL, 12 % left at the door: 500 mL wet',
			job: job(),
			passes: [quantity(millilitres(500)), quantity(millilitres(200))],
			fails: [[quantity(litres(1)), 'high']]
		},
		{
			name: 'a sheet that is silent counts all of it',
			job: job({ coating: 'silent' }),
			shop: silent,
			passes: [quantity(millilitres(60))],
			fails: [[quantity(millilitres(61)), 'high']]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

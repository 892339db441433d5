import rule from '../../../../../src/lib/engine/rules/spraying/wet-film-for-dry-film';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			// 20 µm in two coats of 32 % solids: 10/0.32
			name: '31 µm a coat for 20 µm of sheet F',
			job: job(),
			passes: [quantity(micrometres(31.25)), quantity(micrometres(28))],
			fails: [
				// the dry film itself, and the whole film in one coat
				[quantity(micrometres(20)), 'low'],
				[quantity(micrometres(62.5)), 'high']
			]
		},
		{
			name: 'a drawing of 30 µm asks for half as much again',
			job: job({ film: { min: micrometres(28), max: micrometres(32), basis: 'per-side' } }),
			passes: [quantity(micrometres(47))],
			fails: [
				[quantity(micrometres(31)), 'low'],
				[quantity(micrometres(94)), 'high']
			]
		},
		{
			// sheet F gives 15 to 25 µm, so 20 to 25 µm are left: 22.5 µm in two coats of 32 % solids
			name: 'of a drawing that reaches beyond the sheet only what the sheet can give',
			job: job({ film: { min: micrometres(20), max: micrometres(60), basis: 'per-side' } }),
			passes: [quantity(micrometres(35.2))],
			fails: [[quantity(micrometres(62.5)), 'high']]
		}
	],
	[job({ film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' } })]
);

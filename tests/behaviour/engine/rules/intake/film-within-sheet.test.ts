import rule from '../../../../../src/lib/engine/rules/intake/film-within-sheet';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'thicker than the sheet’s 25 µm',
			job: job({ film: { min: micrometres(26), max: micrometres(40), basis: 'per-side' } }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'thinner than the sheet’s 15 µm',
			job: job({ film: { min: micrometres(8), max: micrometres(14), basis: 'per-side' } }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[
		job(),
		job({ film: { min: micrometres(25), max: micrometres(40), basis: 'per-side' } }),
		job({ film: { min: micrometres(26), max: micrometres(40), basis: 'unstated' } })
	]
);

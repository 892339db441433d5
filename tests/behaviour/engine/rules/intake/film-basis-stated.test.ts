import rule from '../../../../../src/lib/engine/rules/intake/film-basis-stated';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '25 µm without per side or total',
			job: job({ film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' } }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[job(), job({ film: { min: micrometres(20), max: micrometres(25), basis: 'per-side' } })]
);

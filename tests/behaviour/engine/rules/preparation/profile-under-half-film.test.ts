import rule from '../../../../../src/lib/engine/rules/preparation/profile-under-half-film';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const drawn = (min: number, max: number) =>
	job({ film: { min: micrometres(min), max: micrometres(max), basis: 'per-side' } });

ruleCases(
	rule,
	[
		{
			name: 'a film of 15 µm at its thinnest covers 7.5 µm of profile',
			job: job(),
			passes: [quantity(micrometres(7.5)), quantity(micrometres(5))],
			fails: [
				[quantity(micrometres(10)), 'high'],
				[quantity(micrometres(19)), 'high'],
				[quantity(micrometres(2)), 'low']
			]
		},
		{
			name: 'a drawn film of 20 µm at its thinnest covers 10 µm',
			job: drawn(20, 25),
			passes: [quantity(micrometres(10))],
			fails: [
				[quantity(micrometres(15)), 'high'],
				[quantity(micrometres(5)), 'low']
			]
		}
	],
	[
		drawn(8, 15),
		job({ parts: [part({ material: 'glass-laminate', magnetSticks: false })] }),
		job({ film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' } })
	]
);

import rule from '../../../../../src/lib/engine/rules/mixing/batch-covers-the-job';
import { metres, micrometres, millilitres, millimetres } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

const tube = part({
	shape: 'tube',
	length: millimetres(500),
	width: millimetres(40),
	thickness: millimetres(2),
	count: 10
});

ruleCases(
	rule,
	[
		{
			// 20 plates · 2 · 120 mm · 80 mm = 0.384 m²; 20 µm of film, 32 % solids, 65 % transfer
			name: '36.9 mL cover twenty plates on both sides',
			job: job(),
			passes: [quantity(millilitres(37)), quantity(millilitres(46))],
			fails: [
				[quantity(millilitres(20)), 'low'],
				[quantity(millilitres(100)), 'high']
			]
		},
		{
			// 10 · π · 40 mm · 500 mm = 0.628 m²: tubes are coated outside only
			name: '60.4 mL cover ten tubes outside',
			job: job({ parts: [tube] }),
			passes: [quantity(millilitres(61)), quantity(millilitres(75))],
			fails: [
				[quantity(millilitres(55)), 'low'],
				[quantity(millilitres(125)), 'high']
			]
		},
		{
			name: 'parts of one ticket add up',
			job: job({ parts: [part(), tube] }),
			passes: [quantity(millilitres(106))],
			fails: [[quantity(millilitres(66)), 'low']]
		},
		{
			name: 'the drawing asks for twice the film and so for twice the coating',
			job: job({ film: { min: micrometres(35), max: micrometres(45), basis: 'per-side' } }),
			passes: [quantity(millilitres(80))],
			fails: [[quantity(millilitres(50)), 'low']]
		}
	],
	[
		// nobody knows yet which film is meant
		job({ film: { min: micrometres(20), max: micrometres(25), basis: 'unstated' } }),
		// beyond any shop: refused quietly instead of a formula failing
		job({ parts: [part({ length: metres(3), width: metres(2), count: 5000 })] })
	]
);

import rule from '../../../../../src/lib/engine/rules/mixing/strainer-opening';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'a 45 µm cone takes the filler out of coating F',
		job: job(),
		passes: [quantity(micrometres(100)), quantity(micrometres(150))],
		fails: [
			[quantity(micrometres(45)), 'low'],
			[quantity(micrometres(300)), 'high']
		]
	},
	{
		name: 'the thin film of sheet E wants a fine one',
		job: job({ coating: 'demo-e-air-cured' }),
		passes: [quantity(micrometres(45)), quantity(micrometres(75))],
		fails: [[quantity(micrometres(190)), 'high']]
	}
]);

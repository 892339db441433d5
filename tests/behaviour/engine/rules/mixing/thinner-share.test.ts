import rule from '../../../../../src/lib/engine/rules/mixing/thinner-share';
import { percent } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet F permits up to 10 %',
		job: job(),
		passes: [quantity(percent(10))],
		fails: [
			[quantity(percent(15)), 'high'],
			[quantity(percent(2)), 'low']
		]
	},
	{
		name: 'a sheet that names no thinner permits none at all',
		job: job({ coating: 'demo-d-high-bake' }),
		passes: [quantity(percent(0))],
		fails: [[quantity(percent(5)), 'high']]
	}
]);

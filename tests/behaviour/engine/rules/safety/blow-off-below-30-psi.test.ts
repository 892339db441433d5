import rule from '../../../../../src/lib/engine/rules/safety/blow-off-below-30-psi';
import { bar, psi } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: '30 psi itself is a breach: the law says less than',
		job: job(),
		passes: [quantity(psi(29.9)), quantity(bar(1))],
		fails: [
			[quantity(psi(30)), 'high'],
			[quantity(bar(7)), 'high']
		]
	}
]);

import rule from '../../../../../src/lib/engine/rules/spraying/hvlp-limit';
import { bar, psi } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: '10 psi is still within, however the gauge is marked',
		job: job(),
		passes: [quantity(psi(10)), quantity(bar(0.69)), quantity(psi(2))],
		fails: [
			[quantity(psi(10.1)), 'high'],
			[quantity(bar(0.7)), 'high'],
			// 30 psi at the handle is not the cap
			[quantity(psi(30)), 'high']
		]
	}
]);

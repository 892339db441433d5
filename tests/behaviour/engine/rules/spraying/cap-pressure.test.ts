import rule from '../../../../../src/lib/engine/rules/spraying/cap-pressure';
import { bar, psi } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'sheet F is silent: the shop’s 0.35 to 0.69 bar',
		job: job(),
		passes: [quantity(bar(0.35)), quantity(bar(0.69)), quantity(psi(8))],
		fails: [
			[quantity(bar(0.2)), 'low'],
			// a ticket in psi on a regulator marked in bar
			[quantity(bar(3)), 'high']
		]
	},
	{
		name: 'sheet C states its own and overrides the shop',
		job: job({ coating: 'demo-c-heat-cured-lubricant' }),
		passes: [quantity(bar(0.5))],
		fails: [
			[quantity(bar(0.65)), 'high'],
			[quantity(bar(0.3)), 'low']
		]
	}
]);

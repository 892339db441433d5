import rule from '../../../../../src/lib/engine/rules/spraying/gun-speed';
import { metresPerSecond } from '../../../../../src/lib/engine/units/construct';
import { job, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: '200 to 400 mm/s',
		job: job(),
		passes: [quantity(metresPerSecond(0.2)), quantity(metresPerSecond(0.4))],
		fails: [
			[quantity(metresPerSecond(0.05)), 'low'],
			[quantity(metresPerSecond(0.9)), 'high']
		]
	}
]);

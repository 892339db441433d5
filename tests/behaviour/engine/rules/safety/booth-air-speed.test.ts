import rule from '../../../../../src/lib/engine/rules/safety/booth-air-speed';
import { feetPerMinute } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: '100 ft/min is enough',
		job: job({ bench: { boothSpeed: feetPerMinute(100) } }),
		passes: [choice('spray')],
		fails: [[choice('stop'), 'wrong']]
	},
	{
		name: '99 ft/min is not',
		job: job({ bench: { boothSpeed: feetPerMinute(99) } }),
		passes: [choice('stop')],
		fails: [[choice('spray'), 'wrong']]
	}
]);

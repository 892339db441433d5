import rule from '../../../../../src/lib/engine/rules/safety/no-silica-sand';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'the old can of sand stays on the shelf',
		job: job({ bench: { media: ['silica-sand', 'garnet'] } }),
		passes: [choice('garnet'), choice('scuff')],
		fails: [[choice('silica-sand'), 'wrong']]
	}
]);

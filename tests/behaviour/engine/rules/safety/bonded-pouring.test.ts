import rule from '../../../../../src/lib/engine/rules/safety/bonded-pouring';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'drum to plastic jug on an insulated bench is a spark',
		job: job(),
		passes: [choice('bonded')],
		fails: [[choice('plastic'), 'wrong']]
	}
]);

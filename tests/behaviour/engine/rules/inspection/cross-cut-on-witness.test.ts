import rule from '../../../../../src/lib/engine/rules/inspection/cross-cut-on-witness';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'never on the customer’s part',
		job: job(),
		passes: [choice('witness')],
		fails: [[choice('part'), 'wrong']]
	}
]);

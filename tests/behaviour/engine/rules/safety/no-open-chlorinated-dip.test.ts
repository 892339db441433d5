import rule from '../../../../../src/lib/engine/rules/safety/no-open-chlorinated-dip';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'an open tray beside the oven is no cleaning method',
		job: job(),
		passes: [choice('aqueous'), choice('solvent-immersion')],
		fails: [[choice('chlorinated-dip'), 'wrong']]
	}
]);

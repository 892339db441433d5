import rule from '../../../../../src/lib/engine/rules/inspection/failed-witness-holds-load';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'one failed panel, one whole load on hold',
		job: job(),
		passes: [choice('hold')],
		fails: [
			[choice('release'), 'wrong'],
			[choice('recheck'), 'wrong']
		]
	}
]);

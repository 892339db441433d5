import rule from '../../../../../src/lib/engine/rules/inspection/release-by-another';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'not the one who sprayed',
		job: job(),
		passes: [choice('other')],
		fails: [[choice('sprayer'), 'wrong']]
	}
]);

import rule from '../../../../../src/lib/engine/rules/preparation/preparation-order';
import { job, order } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'degreasing after blasting drives oil in',
		job: job(),
		passes: [order('degrease', 'water-break', 'mask', 'blast', 'blow-off', 'coat')],
		fails: [
			[order('blast', 'degrease', 'water-break', 'mask', 'blow-off', 'coat'), 'wrong'],
			[order('degrease', 'water-break', 'blast', 'mask', 'blow-off', 'coat'), 'wrong'],
			[order('degrease', 'mask', 'water-break', 'blast', 'blow-off', 'coat'), 'wrong'],
			[order('degrease', 'water-break', 'mask', 'blast', 'coat', 'blow-off'), 'wrong'],
			[order('degrease', 'water-break', 'mask', 'blast', 'coat'), 'wrong']
		]
	}
]);

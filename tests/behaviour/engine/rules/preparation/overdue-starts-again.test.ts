import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/overdue-starts-again';
import { hours } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(
	rule,
	[
		{
			name: 'blasted on Friday, coated on Monday',
			job: job({ blastedAgo: hours(65) }),
			passes: [choice('restart')],
			fails: [
				[choice('wipe'), 'wrong'],
				[choice('coat'), 'wrong']
			]
		},
		{
			name: 'brass after two hours',
			job: job({ parts: [part({ material: 'brass', magnetSticks: false })], blastedAgo: hours(2) }),
			passes: [choice('restart')],
			fails: [[choice('coat'), 'wrong']]
		}
	],
	[job(), job({ blastedAgo: hours(4) }), of('carbon-laminate')]
);

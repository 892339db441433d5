import rule from '../../../../../src/lib/engine/rules/preparation/residue-repeats-loop';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'the first residue',
			job: job({ residueLoops: 1 }),
			passes: [choice('repeat')],
			fails: [
				[choice('coat'), 'wrong'],
				[choice('tell-supervisor'), 'wrong']
			]
		},
		{
			name: 'still within three rounds',
			job: job({ residueLoops: 3 }),
			passes: [choice('repeat')],
			fails: [[choice('tell-supervisor'), 'wrong']]
		},
		{
			name: 'more than three',
			job: job({ residueLoops: 4 }),
			passes: [choice('tell-supervisor')],
			fails: [
				[choice('repeat'), 'wrong'],
				[choice('coat'), 'wrong']
			]
		}
	],
	[job()]
);

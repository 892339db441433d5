import rule from '../../../../../src/lib/engine/rules/inspection/film-readings-judged';
import { micrometres } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

const spots = (...means: number[]) =>
	means.map((mean) => [mean - 0.5, mean, mean + 0.5].map((reading) => micrometres(reading)));

ruleCases(
	rule,
	[
		{
			name: 'five spots inside the window',
			job: job({ readings: spots(18, 20, 22, 19, 21) }),
			passes: [choice('accept')],
			fails: [[choice('hold'), 'wrong']]
		},
		{
			name: 'a mean of 17 µm hides one spot at 11 µm',
			job: job({ readings: spots(11, 18, 18, 19, 19) }),
			passes: [choice('hold')],
			fails: [[choice('accept'), 'wrong']]
		},
		{
			name: 'spots above 0.8 of the minimum with a mean below it',
			job: job({ readings: spots(13, 14, 15, 14, 13) }),
			passes: [choice('hold')],
			fails: [[choice('accept'), 'wrong']]
		},
		{
			name: 'one spot above 1.2 of the maximum',
			job: job({ readings: spots(20, 20, 20, 20, 31) }),
			passes: [choice('hold')],
			fails: [[choice('accept'), 'wrong']]
		},
		{
			name: 'four spots say too little',
			job: job({ readings: spots(18, 20, 22, 19) }),
			passes: [choice('hold')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[job(), job({ readings: [[]] })]
);

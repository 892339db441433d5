import rule from '../../../../../src/lib/engine/rules/curing/unlike-parts-split';
import { millimetres } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part, shop } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'sheet of 2 mm and block of 20 mm do not share one time',
			job: job({ parts: [part({ thickness: millimetres(2) }), part({ thickness: millimetres(20) })] }),
			passes: [choice('split')],
			fails: [[choice('together'), 'wrong']]
		},
		{
			name: 'the shop may draw the line closer',
			job: job({ parts: [part({ thickness: millimetres(3) }), part({ thickness: millimetres(5) })] }),
			shop: { ...shop, settings: { 'cure.unlike-walls': { from: '2026-01-01', value: 1.5 } } },
			passes: [choice('split')],
			fails: [[choice('together'), 'wrong']]
		}
	],
	[
		job(),
		job({ parts: [part({ thickness: millimetres(3) }), part({ thickness: millimetres(5) })] }),
		// a bar is heated all round: 10 mm of bar heat through like 5 mm of plate
		job({ parts: [part({ thickness: millimetres(2) }), part({ shape: 'bar', thickness: millimetres(10) })] }),
		job({
			coating: 'demo-e-air-cured',
			parts: [part({ thickness: millimetres(2) }), part({ thickness: millimetres(20) })]
		})
	]
);

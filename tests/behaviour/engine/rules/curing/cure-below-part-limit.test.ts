import rule from '../../../../../src/lib/engine/rules/curing/cure-below-part-limit';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '6061-T6 stays at or below the shop’s 177 °C',
			job: job({ parts: [part({ material: 'aluminium-6061' })] }),
			passes: [quantity(celsius(150)), quantity(celsius(177))],
			fails: [[quantity(celsius(180)), 'high']]
		},
		{
			name: 'the customer’s written limit wins',
			job: job({ writtenCap: celsius(148) }),
			passes: [quantity(celsius(148))],
			fails: [[quantity(celsius(150)), 'high']]
		},
		{
			name: 'a spring tempered at 230 °C may not reach 206 °C',
			job: job({
				parts: [part({ material: 'spring-steel', tempered: celsius(230) })],
				writtenCap: celsius(260)
			}),
			passes: [quantity(celsius(205))],
			fails: [[quantity(celsius(206)), 'high']]
		},
		{
			name: 'the lowest limit of a mixed ticket governs',
			job: job({ parts: [part(), part({ material: 'brass' })] }),
			passes: [quantity(celsius(150))],
			fails: [[quantity(celsius(155)), 'high']]
		}
	],
	[job({ coating: 'demo-e-air-cured' }), job({ parts: [part({ material: 'unknown' })] })]
);

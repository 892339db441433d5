import rule from '../../../../../src/lib/engine/rules/intake/temper-margin';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'a spring tempered at 230 °C stays at 205 °C or below',
			job: job({ parts: [part({ material: 'spring-steel', tempered: celsius(230) })] }),
			passes: [quantity(celsius(205)), quantity(celsius(200))],
			fails: [
				[quantity(celsius(206)), 'high'],
				[quantity(celsius(260)), 'high']
			]
		},
		{
			name: 'the lowest temper of two counts',
			job: job({ parts: [part({ tempered: celsius(300) }), part({ tempered: celsius(190) })] }),
			passes: [quantity(celsius(165))],
			fails: [[quantity(celsius(200)), 'high']]
		}
	],
	[
		job(),
		job({ parts: [part({ tempered: celsius(300) }), part({ material: 'unknown', magnetSticks: null })] })
	]
);

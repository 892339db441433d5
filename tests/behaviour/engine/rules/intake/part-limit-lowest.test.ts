import rule from '../../../../../src/lib/engine/rules/intake/part-limit-lowest';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { job, part, quantity } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'the lowest of several parts: ABS at 60 °C beside steel',
			job: job({ parts: [part(), part({ material: 'abs', magnetSticks: false })] }),
			passes: [quantity(celsius(60)), quantity(celsius(56))],
			fails: [
				[quantity(celsius(200)), 'high'],
				[quantity(celsius(61)), 'high'],
				[quantity(celsius(40)), 'low']
			]
		},
		{
			name: 'a fitted item counts, whatever the customer writes of the part',
			job: job({ parts: [part({ fitted: ['bonded-abs-knob'] })], writtenCap: celsius(180) }),
			passes: [quantity(celsius(60))],
			fails: [
				[quantity(celsius(180)), 'high'],
				[quantity(celsius(20)), 'low']
			]
		},
		{
			name: 'the customer’s written limit replaces that of the material',
			job: job({
				parts: [part({ material: 'aluminium-7075', magnetSticks: false })],
				writtenCap: celsius(150)
			}),
			passes: [quantity(celsius(150))],
			fails: [
				[quantity(celsius(120)), 'low'],
				[quantity(celsius(151)), 'high']
			]
		},
		{
			name: 'a low temper leaves room below',
			job: job({ parts: [part({ material: 'spring-steel', tempered: celsius(180) })] }),
			passes: [quantity(celsius(155))],
			fails: [
				[quantity(celsius(205)), 'high'],
				[quantity(celsius(140)), 'low']
			]
		}
	],
	[job({ parts: [part(), part({ material: 'unknown' })] })]
);

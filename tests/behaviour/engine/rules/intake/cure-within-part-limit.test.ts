import rule from '../../../../../src/lib/engine/rules/intake/cure-within-part-limit';
import { celsius } from '../../../../../src/lib/engine/units/construct';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: '7075-T6 under a cure of 145 °C: 120 °C is its limit',
			job: job({ parts: [part({ material: 'aluminium-7075', magnetSticks: false })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'a bracket with a bonded ABS knob inside',
			job: job({ parts: [part({ fitted: ['bonded-abs-knob'] })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'a spring clip whose temper leaves less than the cure',
			job: job({ parts: [part({ material: 'spring-steel', tempered: celsius(160) })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'magnesium under a hot cure may be refused for its dust',
			job: job({ parts: [part({ material: 'magnesium', magnetSticks: false })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		},
		{
			name: 'the customer writes a limit below the cure',
			job: job({ writtenCap: celsius(140) }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		},
		{
			name: 'one delicate part among sturdy ones: polypropylene, 75 °C, under the cure of polymers',
			job: job({ parts: [part(), part({ material: 'polypropylene', magnetSticks: false })] }),
			passes: [choice('ask')],
			fails: [
				[choice('accept'), 'wrong'],
				[choice('refuse'), 'wrong']
			]
		}
	],
	[
		job(),
		job({ parts: [part({ material: 'aluminium-7075', magnetSticks: false })], writtenCap: celsius(150) }),
		job({ parts: [part({ material: 'spring-steel', tempered: celsius(170) })] }),
		job({ parts: [part({ material: 'unknown' })] })
	]
);

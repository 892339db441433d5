import rule from '../../../../../src/lib/engine/rules/mixing/sound-lot-used';
import { celsius, hours } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'in date, clear and warm: it is used',
			job: job(),
			passes: [choice('use')],
			fails: [
				[choice('warm'), 'wrong'],
				[choice('reject'), 'wrong']
			]
		}
	],
	[
		job({ shelf: { expires: '2026-01-01' } }),
		job({ shelf: { hardenerState: 'crystals' } }),
		job({ shelf: { stored: celsius(5), warming: hours(1) } })
	]
);

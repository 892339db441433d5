import rule from '../../../../../src/lib/engine/rules/mixing/cold-can-warms-up';
import { celsius, hours } from '../../../../../src/lib/engine/units/construct';
import { choice, job } from '../bench';
import { ruleCases } from '../rule-cases';

const fetchedThisMorning = { stored: celsius(12), warming: hours(2) };

ruleCases(
	rule,
	[
		{
			name: 'a can from a 12 °C store is not sprayed at once',
			job: job({ shelf: fetchedThisMorning }),
			passes: [choice('warm')],
			fails: [
				[choice('use'), 'wrong'],
				[choice('reject'), 'wrong']
			]
		}
	],
	[
		job(),
		job({ shelf: { stored: celsius(12), warming: hours(24) } }),
		// rejected anyway
		job({ shelf: { ...fetchedThisMorning, expires: '2026-01-01' } }),
		job({ shelf: { ...fetchedThisMorning, hardenerState: 'crystals' } })
	]
);

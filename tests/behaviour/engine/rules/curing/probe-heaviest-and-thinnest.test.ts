import rule from '../../../../../src/lib/engine/rules/curing/probe-heaviest-and-thinnest';
import { choices, job } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'both sections, and neither wire nor wall',
			job: job(),
			passes: [choices('heaviest', 'thinnest')],
			fails: [
				[choices('thinnest'), 'low'],
				[choices('rack-wire'), 'low'],
				[choices('heaviest', 'thinnest', 'rack-wire', 'oven-wall'), 'high']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

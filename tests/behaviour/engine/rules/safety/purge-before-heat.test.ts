import rule from '../../../../../src/lib/engine/rules/safety/purge-before-heat';
import { job, order } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'fan, purge, load, heat',
			job: job(),
			passes: [
				order('fan-on', 'purge', 'load', 'heat'),
				order('fan-on', 'load', 'purge', 'heat'),
				order('fan-on', 'purge', 'heat', 'load')
			],
			fails: [
				[order('heat', 'fan-on', 'purge', 'load'), 'wrong'],
				[order('load', 'fan-on', 'purge', 'heat'), 'wrong'],
				[order('fan-on', 'heat', 'purge', 'load'), 'wrong']
			]
		}
	],
	[job({ coating: 'demo-e-air-cured' })]
);

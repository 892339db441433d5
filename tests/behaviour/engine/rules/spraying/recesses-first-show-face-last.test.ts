import rule from '../../../../../src/lib/engine/rules/spraying/recesses-first-show-face-last';
import { job, order } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(rule, [
	{
		name: 'edges and recesses in either order, then faces, then the show face',
		job: job(),
		passes: [
			order('edges', 'recesses', 'faces', 'show-face'),
			order('recesses', 'edges', 'faces', 'show-face')
		],
		fails: [
			[order('show-face', 'faces', 'edges', 'recesses'), 'wrong'],
			[order('faces', 'recesses', 'edges', 'show-face'), 'wrong'],
			[order('edges', 'faces', 'show-face'), 'wrong']
		]
	}
]);

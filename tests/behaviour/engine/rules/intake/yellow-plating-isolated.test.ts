import rule from '../../../../../src/lib/engine/rules/intake/yellow-plating-isolated';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'shiny yellow-gold fasteners among bare parts',
			job: job({ parts: [part({ surface: 'bare' }), part({ surface: 'yellow-plating' })] }),
			passes: [choice('ask'), choice('refuse')],
			fails: [[choice('accept'), 'wrong']]
		}
	],
	[job(), job({ parts: [part({ surface: 'old-coating' })] })]
);

import rule from '../../../../../src/lib/engine/rules/inspection/gauge-suits-substrate';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

ruleCases(
	rule,
	[
		{
			name: 'steel: magnetic',
			job: job(),
			passes: [choice('magnetic')],
			fails: [
				[choice('eddy'), 'wrong'],
				[choice('foil-mass'), 'wrong']
			]
		},
		{
			name: 'aluminium: eddy current, a magnetic probe reads nothing there',
			job: job({ parts: [part({ material: 'aluminium-6061' })] }),
			passes: [choice('eddy')],
			fails: [[choice('magnetic'), 'wrong']]
		},
		{
			name: 'anodised: zero on the anodised piece, or the oxide is added',
			job: job({ parts: [part({ material: 'anodised-aluminium' })] }),
			passes: [choice('eddy-on-anodised')],
			fails: [
				[choice('eddy'), 'wrong'],
				[choice('magnetic'), 'wrong']
			]
		},
		{
			name: 'carbon fibre upsets eddy readings: mass gain',
			job: job({ parts: [part({ material: 'carbon-laminate' })] }),
			passes: [choice('foil-mass')],
			fails: [[choice('eddy'), 'wrong']]
		}
	],
	[job({ parts: [part({ material: 'unknown' })] }), job({ parts: [part(), part({ material: 'brass' })] })]
);

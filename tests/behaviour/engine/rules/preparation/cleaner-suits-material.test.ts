import type { Part } from '../../../../../src/lib/engine/job/part';
import rule from '../../../../../src/lib/engine/rules/preparation/cleaner-suits-material';
import { choice, job, part } from '../bench';
import { ruleCases } from '../rule-cases';

const of = (material: Part['material'], over: Partial<Part> = {}) =>
	job({ parts: [part({ material, magnetSticks: false, ...over })] });

ruleCases(rule, [
	{
		name: 'oily steel: solvent or hot alkali, never a wipe alone',
		job: job(),
		passes: [choice('solvent-immersion'), choice('aqueous')],
		fails: [
			[choice('ketone-wipe'), 'wrong'],
			[choice('mild-detergent'), 'wrong'],
			[choice('chlorinated-dip'), 'wrong']
		]
	},
	{
		name: 'bare steel may be wiped',
		job: of('carbon-steel', { surface: 'bare' }),
		passes: [choice('ketone-wipe'), choice('solvent-immersion')],
		fails: [[choice('chlorinated-dip'), 'wrong']]
	},
	{
		name: 'hot alkali etches aluminium',
		job: of('aluminium-6061'),
		passes: [choice('solvent-immersion')],
		fails: [[choice('aqueous'), 'wrong']]
	},
	{
		name: 'smudges on a new polycarbonate cover: no ketone',
		job: of('polycarbonate'),
		passes: [choice('mild-detergent')],
		fails: [
			[choice('ketone-wipe'), 'wrong'],
			[choice('solvent-immersion'), 'wrong']
		]
	},
	{
		name: 'one plastic part among steel decides',
		job: job({ parts: [part(), part({ material: 'abs', magnetSticks: false })] }),
		passes: [choice('mild-detergent')],
		fails: [[choice('solvent-immersion'), 'wrong']]
	}
]);

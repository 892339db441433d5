import type { Demand, Plan } from '../../../../src/lib/engine/plan/plan';
import type { FieldId } from '../../../../src/lib/engine/setup/fields';
import { atMost, below, demand, range } from '../plan/demand';
import { choice, quantity } from '../rules/bench';

const planned = (field: FieldId, answer: Plan['fields'][number]['answer'], ...demands: Demand[]) => ({
	field,
	demands,
	superseded: [demand('weaker', range(0, 0.001))],
	answer
});

/** Three fields: a choice that only costs, a window under a hard limit, and a safety limit. */
export const invented: Plan = {
	engine: 'test',
	decision: 'accept',
	reasons: [],
	conflicts: [],
	fields: [
		planned(
			'decision',
			choice('accept'),
			demand('start', { kind: 'one-of', options: ['accept'] }, { severity: 'cost' })
		),
		planned(
			'gun-distance',
			quantity(0.15),
			demand('window', range(0.1, 0.2, 'length', 0.05), { competency: 'spraying' }),
			demand('limit', atMost(0.3), { competency: 'spraying', authority: 'part-limit' })
		),
		planned(
			'blow-off-pressure',
			quantity(1e5),
			demand('air', below(2e5, 'pressure'), {
				competency: 'safety',
				severity: 'safety-stop',
				authority: 'law'
			})
		)
	]
};

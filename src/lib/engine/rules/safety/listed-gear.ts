import type { Situation } from '../../plan/situation';
import { shopValue } from '../../shop/shop';
import { PROTECTIVE, type GearTask } from '../../shop/values/safety';
import type { Expectation } from '../expectation';

/** What the shop's hazard assessment lists for a task. The tool adds nothing to it and takes nothing away. */
export const listedGear = ({ shop }: Situation, task: GearTask) =>
	PROTECTIVE.filter((item) => shopValue(shop, `gear.${task}.${item}`).value > 0);

/** Everything on the list, and no light shoes in a workshop. More than the list is never a breach. */
export const wearsListed = (seen: Situation, task: GearTask): Expectation => ({
	kind: 'all-of',
	options: listedGear(seen, task),
	not: ['sandals']
});

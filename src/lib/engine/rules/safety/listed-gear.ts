import { remembered } from '../../plan/remembered';
import type { Situation } from '../../plan/situation';
import { shopValue, type Shop } from '../../shop/shop';
import { PROTECTIVE, type GearTask } from '../../shop/values/safety';
import type { Expectation } from '../expectation';

/** What the shop's hazard assessment lists for each task. */
const listsOf = remembered((shop: Shop) =>
	remembered(
		(task: GearTask) => PROTECTIVE.filter((item) => shopValue(shop, `gear.${task}.${item}`).value > 0),
		new Map()
	)
);

/** What the shop's hazard assessment lists for a task. The tool adds nothing to it and takes nothing away. */
export const listedGear = ({ shop }: Situation, task: GearTask) => listsOf(shop)(task);

/** Everything on the list, and no light shoes in a workshop. More than the list is never a breach. */
export const wearsListed = (seen: Situation, task: GearTask): Expectation => ({
	kind: 'all-of',
	options: listedGear(seen, task),
	not: ['sandals']
});

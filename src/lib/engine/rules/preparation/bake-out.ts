import { cureTemperature } from '../../plan/cure-window';
import { lowestCap } from '../../plan/part-cap';
import type { Situation } from '../../plan/situation';
import { workedOut } from '../../plan/trace';
import { shopValue, shopWindow } from '../../shop/shop';

const RULE = 'bake-out-temperature';

/** Whether gas has to be driven out before coating: a porous part that will see an oven cure. */
export const needsBakeOut = (seen: Situation): boolean =>
	seen.job.parts.some(({ porous }) => porous) && cureTemperature(seen) !== undefined;

/** Part temperature of the bake-out: hotter than the cure ever gets, as far as the part limit lets it. */
export function bakeOutTemperature(seen: Situation) {
	const hottest = cureTemperature(seen)!.max;
	const above = shopWindow(seen.shop, 'bake-out.above-cure');
	const cap = lowestCap(seen);
	const label = { en: 'Hottest cure and more', es: 'Curado más caliente y algo más' };
	const over = (by: typeof above.min) =>
		workedOut(RULE, 'temperature', hottest.value + by.value, label, { hottest, by });
	const wished = { min: over(above.min), max: over(above.max) };
	if (!cap || cap.value >= wished.max.value) return wished;
	const near = shopValue(seen.shop, 'bake-out.near-cap');
	const held = { en: 'Just below the part limit', es: 'Justo debajo del límite de la pieza' };
	const below = workedOut(RULE, 'temperature', cap.value - near.value, held, { cap, near });
	return { min: below.value < wished.min.value ? below : wished.min, max: cap };
}

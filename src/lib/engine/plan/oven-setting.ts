import { shopValue } from '../shop/shop';
import { cureTemperature } from './cure-window';
import { lowestCap } from './part-cap';
import type { Situation } from './situation';
import { workedOut, type Traced } from './trace';

/** The rule that asks for the heat-up time; it is named as the origin of the sum. */
const RULE = 'heat-up-before-soak';

/**
 * What the oven is set to for this load: somewhat above the middle of the sheet's cure window, so that the slowest part
 * arrives, and never above the window or the lowest limit of a part. Undefined where the sheet gives no cure.
 */
export function ovenSetting(seen: Situation): Traced<'temperature'> | undefined {
	const window = cureTemperature(seen);
	if (!window) return undefined;
	const above = shopValue(seen.shop, 'cure.air-above-middle');
	const cap = lowestCap(seen);
	const wanted = (window.min.value + window.max.value) / 2 + above.value;
	const value = Math.min(wanted, window.max.value, cap?.value ?? Infinity);
	const label = { en: 'Oven air', es: 'Aire del horno' };
	return workedOut(RULE, 'temperature', value, label, { ...window, above, ...(cap ? { cap } : {}) });
}

import { wallHeatUp } from '../physics/heat/wall-heat-up';
import { shopValue } from '../shop/shop';
import { thermal } from '../substrates/thermal';
import { degrees } from '../units/construct';
import { cureTemperature } from './cure-window';
import { tracedHeatDepth } from './heat-depth';
import { ovenSetting } from './oven-setting';
import type { Situation } from './situation';
import { fromJob, type Traced } from './trace';

/** Air closer than this to where the part must get: the last degree takes so long that no estimate is worth its name. */
const CLOSEST = degrees(1);

/** From where the parts start to where the cure begins; undefined where the oven does not bring them there. */
function path(seen: Situation) {
	const { weather } = seen.job;
	const air = ovenSetting(seen);
	const target = cureTemperature(seen)?.min;
	if (!air || !target || air.value - target.value < CLOSEST || weather.part >= target.value) return undefined;
	const label = { en: 'Coldest spot of the parts', es: 'Zona más fría de las piezas' };
	return { start: fromJob('weather.part', 'temperature', weather.part, label), air, target };
}

/** Whether it can be said how long the load heats: materials known, and an oven that gets them to the cure. */
export const heatUpKnown = (seen: Situation): boolean =>
	path(seen) !== undefined && seen.job.parts.every(({ material }) => material !== 'unknown');

/**
 * Time from the oven door until the slowest part is at the sheet's cure temperature, in its core where it does not heat
 * as one. Undefined where `heatUpKnown` says so. An estimate: the thermocouple on the part decides.
 */
export function slowestHeatUp(seen: Situation): Traced<'duration'> | undefined {
	const way = path(seen);
	if (!way) return undefined;
	const heatTransfer = shopValue(seen.shop, 'cure.heat-transfer');
	let slowest: Traced<'duration'> | undefined;
	for (const [at, part] of seen.job.parts.entries()) {
		if (part.material === 'unknown') return undefined;
		const depth = tracedHeatDepth(part, at);
		const time = wallHeatUp.of({ ...thermal(part.material), depth, heatTransfer, ...way });
		if (!slowest || time.value > slowest.value) slowest = time;
	}
	return slowest;
}

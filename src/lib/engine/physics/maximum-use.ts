import type { Dimension, Si } from '../units/dimension';

/**
 * Highest concentration a respirator may be used in: assigned protection factor times the exposure limit, and never above
 * the level immediately dangerous to life or health (29 CFR 1910.134(d)(3)(i)(B)). All in one unit: a share of the air
 * (ppm) or a mass in it.
 */
export function maximumUse<D extends Dimension>(protection: number, limit: Si<D>, dangerous: Si<D>): Si<D> {
	if (!(protection >= 5 && protection <= 10_000 && limit > 0 && dangerous > 0))
		throw new RangeError(`maximum-use: factor ${protection}, limit ${limit}, danger ${dangerous}`);
	return Math.min(protection * limit, dangerous) as Si<D>;
}

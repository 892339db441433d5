import { cite } from '../../sources/provenance';
import type { Metre } from '../../units/dimension';
import { defineProcedure } from '../procedure';

type Limits = { readonly min: Metre; readonly max: Metre };

export type GuardedLimits = {
	/** Between these a film is proven inside; null where the gauge is too coarse for the window. */
	readonly inside: Limits | null;
	/** Beyond these a film is proven outside. */
	readonly outside: Limits;
};

/**
 * Limits moved by a guard band as wide as the expanded uncertainty: inwards to accept with a clear conscience, outwards to
 * reject with one. Between the two a reading proves nothing. Window and uncertainty in metres; throws a RangeError where the
 * minimum is above the maximum.
 */
export const guardedLimits = defineProcedure<{ min: Metre; max: Metre; uncertainty: Metre }, GuardedLimits>({
	id: 'guarded-limits',
	title: { en: 'Limits with a guard band', es: 'Límites con banda de guarda' },
	equation: 'inside: min + U to max − U; outside: below min − U or above max + U',
	source: cite('ilac-g8', '4.1, 4.2.3', { read: 'pages 8 and 10 of G8:09/2019' }),
	inputs: { min: 'length', max: 'length', uncertainty: 'length' },
	validFor: { min: [0, 1], max: [0, 1], uncertainty: [0, 1] },
	compute({ min, max, uncertainty }) {
		if (min > max) throw new RangeError(`guarded-limits: min = ${min} must not be above max = ${max} (SI)`);
		const [low, high] = [min + uncertainty, max - uncertainty];
		return {
			inside: low > high ? null : { min: low as Metre, max: high as Metre },
			outside: { min: (min - uncertainty) as Metre, max: (max + uncertainty) as Metre }
		};
	}
});

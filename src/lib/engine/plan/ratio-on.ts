import { ratioByMass } from '../physics/mixing/ratio-by-mass';
import { ratioByVolume } from '../physics/mixing/ratio-by-volume';
import { sheetValue, type Situation } from './situation';
import type { Traced } from './trace';

/**
 * The sheet's mix ratio as it must read on cups (`volume`) or on a scale (`mass`), converted with both densities where
 * the sheet states it on the other basis. Undefined for a coating that is not mixed or a sheet without the numbers.
 */
export function ratioOn(basis: 'volume' | 'mass', seen: Situation): Traced<'ratio'> | undefined {
	const ratio = sheetValue(seen, 'mix-ratio');
	const densityA = sheetValue(seen, 'density-base');
	const densityB = sheetValue(seen, 'density-hardener');
	const stated = seen.sheet.basis === 'weight' ? 'mass' : seen.sheet.basis;
	if (!stated || !ratio) return undefined;
	if (stated === basis) return ratio;
	if (!densityA || !densityB) return undefined;
	return basis === 'mass'
		? ratioByMass.of({ byVolume: ratio, densityA, densityB })
		: ratioByVolume.of({ byMass: ratio, densityA, densityB });
}

import { arithmetic } from '../../sources/provenance';
import type { CubicMetre, Fraction } from '../../units/dimension';
import { defineProcedure } from '../procedure';

/**
 * Volume solids of what comes out when components and thinner are put together: ΣV·VS/ΣV, volumes taken as adding up. Volumes
 * in m³, one volume solids (0 to 1) for each, in the same order; thinner has none. Throws a RangeError where the lists do
 * not match or nothing is poured.
 */
export const blendSolids = defineProcedure<
	{ volumes: readonly CubicMetre[]; solids: readonly Fraction[] },
	Fraction
>({
	id: 'blend-solids',
	title: { en: 'Volume solids of a blend', es: 'Sólidos en volumen de una mezcla' },
	equation: 'VS = Σ V · VS/Σ V',
	source: arithmetic('solids stay, volumes add up'),
	inputs: { volumes: 'volume', solids: 'fraction' },
	validFor: { volumes: [0, 10], solids: [0, 1] },
	compute({ volumes, solids }) {
		if (volumes.length !== solids.length)
			throw new RangeError(
				`blend-solids: ${volumes.length} volumes need as many solids, not ${solids.length}`
			);
		const total = volumes.reduce((sum: number, volume) => sum + volume, 0);
		if (total === 0) throw new RangeError('blend-solids: the volumes must add up to more than 0 m³');
		return (volumes.reduce((sum: number, volume, at) => sum + volume * solids[at]!, 0) / total) as Fraction;
	}
});

import { cite } from '../../sources/provenance';
import type { Si } from '../../units/dimension';
import { defineProcedure } from '../procedure';
import { FACTORS } from './protection-factors';

export type SmallestProtection = {
	/** Times the exposure limit. */
	readonly ratio: number;
	/** At or above what is immediately dangerous, where only the respirators of (d)(2) may be used. */
	readonly dangerous: boolean;
	/** Least assigned factor that suffices; 1 within the limit; null where it is dangerous or no factor is enough. */
	readonly factor: number | null;
};

/** A concentration exactly at a factor is inside it; this takes up rounding in the last bits. */
const SLACK = 1e-12;

const smallest = <D extends 'fraction' | 'density'>(basis: 'share' | 'mass', dimension: D) =>
	defineProcedure<
		{ readonly concentration: Si<D>; readonly limit: Si<D>; readonly danger: Si<D> },
		SmallestProtection
	>({
		id: `smallest-protection-${basis}`,
		title: { en: 'Least protection factor', es: 'Factor de protección mínimo' },
		equation: 'APF ≥ C/limit, C below IDLH',
		source: cite('osha-1910-134', '(d)(3)(i)(A)', { read: 'the rule as quoted' }),
		inputs: { concentration: dimension, limit: dimension, danger: dimension },
		validFor: { concentration: [0, 1], limit: [1e-9, 1], danger: [1e-9, 1] },
		compute({ concentration, limit, danger }) {
			const ratio = concentration / limit;
			const least = ratio * (1 - SLACK);
			const dangerous = concentration >= danger * (1 - SLACK);
			const enough = least <= 1 ? 1 : (FACTORS.find((factor) => factor >= least) ?? null);
			return { ratio, dangerous, factor: dangerous ? null : enough };
		}
	});

/**
 * Least assigned protection factor for a measured concentration, in ppm as a share of the air or as a mass in it. It does
 * not choose a respirator: isocyanate, poor warning, oxygen, skin and eyes ask for more, and so may the SDS.
 */
export const smallestProtection = { share: smallest('share', 'fraction'), mass: smallest('mass', 'density') };

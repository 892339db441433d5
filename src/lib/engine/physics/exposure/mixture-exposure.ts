import { cite } from '../../sources/provenance';
import type { Fraction, Si } from '../../units/dimension';
import { refuseUnpaired } from '../paired';
import { defineProcedure } from '../procedure';

export type MixtureExposure = {
	/** Sum of what is breathed over what is permitted; 1 is the limit of the mixture. */
	readonly sum: Fraction;
	readonly over: boolean;
};

/** A sum of exactly 1 is inside the limit; this takes up rounding in the last bits. */
const SLACK = 1e-12;

const exposure = <D extends 'fraction' | 'density'>(
	basis: 'share' | 'mass',
	concentration: D,
	range: [number, number]
) => {
	const id = `mixture-exposure-${basis}`;
	return defineProcedure<
		{ readonly concentrations: readonly Si<D>[]; readonly limits: readonly Si<D>[] },
		MixtureExposure
	>({
		id,
		title: { en: 'Exposure to a mixture', es: 'Exposición a una mezcla' },
		equation: 'E = C₁/L₁ + C₂/L₂ + … ≤ 1',
		source: cite('osha-1910-1000', '(d)(2)(i)', { read: 'the formula with its worked example' }),
		inputs: { concentrations: concentration, limits: concentration },
		validFor: { concentrations: [0, 1], limits: range },
		compute({ concentrations, limits }) {
			refuseUnpaired(id, { concentrations, limits });
			const sum = concentrations.reduce((total, c, solvent) => total + c / limits[solvent]!, 0);
			return { sum: sum as Fraction, over: sum > 1 + SLACK };
		}
	});
};

/**
 * Solvents that act on the body alike count together: each may be below its own limit and the mixture above. Averages and
 * limits over the same time, all as shares of the air (ppm) or all as mass in it.
 */
export const mixtureExposure = {
	share: exposure('share', 'fraction', [1e-9, 1]),
	mass: exposure('mass', 'density', [1e-9, 1])
};

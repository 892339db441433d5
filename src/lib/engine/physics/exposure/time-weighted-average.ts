import { cite } from '../../sources/provenance';
import type { Second, Si } from '../../units/dimension';
import { refuseUnpaired } from '../paired';
import { defineProcedure } from '../procedure';

/** The working day exposure limits are averaged over, however long the shift was. */
const SHIFT = 28_800;

const average = <D extends 'fraction' | 'density'>(
	basis: 'share' | 'mass',
	concentration: D,
	range: [number, number]
) => {
	const id = `time-weighted-average-${basis}`;
	return defineProcedure<
		{ readonly concentrations: readonly Si<D>[]; readonly durations: readonly Second[] },
		Si<D>
	>({
		id,
		title: { en: 'Eight-hour average exposure', es: 'Exposición promedio de ocho horas' },
		equation: 'E = (C₁·T₁ + C₂·T₂ + …)/8 h',
		source: cite('osha-1910-1000', '(d)(1)(i)', { read: 'the formula with its worked example' }),
		inputs: { concentrations: concentration, durations: 'duration' },
		validFor: { concentrations: range, durations: [0, 86_400] },
		compute({ concentrations, durations }) {
			refuseUnpaired(id, { concentrations, durations });
			return (concentrations.reduce((sum, c, period) => sum + c * durations[period]!, 0) / SHIFT) as Si<D>;
		}
	});
};

/**
 * What a person breathed over a shift, averaged over eight hours: for a longer shift it is higher than the plain mean.
 * Share of the air (ppm) and mass in it (mg/m³) apart. It says nothing of ceilings and short-term limits.
 */
export const timeWeightedAverage = {
	share: average('share', 'fraction', [0, 1]),
	mass: average('mass', 'density', [0, 1])
};

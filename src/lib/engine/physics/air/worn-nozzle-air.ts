import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/**
 * Air that a nozzle takes once it has worn wider, at the same pressure: flow follows the area of the bore. Throws for a
 * bore narrower than it was new.
 */
export const wornNozzleAir = defineFormula({
	id: 'worn-nozzle-air',
	title: { en: 'Air a worn nozzle takes', es: 'Aire que toma una boquilla gastada' },
	equation: "Q' = Q · (d'/d)²",
	source: arithmetic('flow follows the area of the bore'),
	inputs: { air: 'flow', bore: 'length', worn: 'length' },
	gives: 'flow',
	validFor: { air: [0, 1], bore: [1e-3, 0.02], worn: [1e-3, 0.03] },
	compute({ air, bore, worn }) {
		if (worn < bore)
			throw new RangeError(`worn-nozzle-air: a bore of ${worn} m is not worn; allowed is from ${bore} m`);
		return air * (worn / bore) ** 2;
	}
});

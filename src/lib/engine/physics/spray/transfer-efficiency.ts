import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** All of it must not pass for more than all by a rounding error in the last digit. */
const SLACK = 1 + 1e-9;

/**
 * Share of the sprayed solids that ends up on the part, by weight: dry film over liquid sprayed times its weight solids.
 * Solvent is in neither, so it cancels nothing and counts for nothing. The weight solids are measured on the very batch: a
 * small error there is as large an error here. Masses in kg; throws a RangeError where more arrived than was sprayed.
 */
export const transferEfficiency = defineFormula({
	id: 'transfer-efficiency',
	title: { en: 'Transfer efficiency', es: 'Eficiencia de transferencia' },
	equation: 'TE = dry film on the part/(coating sprayed · weight solids)',
	source: cite('astm-d5286', '§3.1.3', { read: 'definitions of D5286 as stored' }),
	inputs: { deposited: 'mass', sprayed: 'mass', solids: 'fraction' },
	gives: 'fraction',
	validFor: { deposited: [0, 100], sprayed: [1e-3, 1000], solids: [0.02, 1] },
	compute: ({ deposited, sprayed, solids }) => {
		const solid = sprayed * solids;
		if (deposited > solid * SLACK)
			throw new RangeError(
				`transfer-efficiency: deposited = ${deposited} is more than the ${solid} kg of solids sprayed`
			);
		return Math.min(deposited / solid, 1);
	}
});

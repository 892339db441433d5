import { arithmetic } from '../../sources/provenance';
import { defineProcedure } from '../procedure';

/** Arithmetic mean of plain numbers of one unit, up to 10⁹ either side of zero. */
export const sampleMean = defineProcedure<{ values: readonly number[] }, number>({
	id: 'sample-mean',
	title: { en: 'Mean of readings', es: 'Promedio de lecturas' },
	equation: 'x̄ = Σ x/n',
	source: arithmetic('definition of the mean'),
	inputs: { values: 'count' },
	validFor: { values: [-1e9, 1e9] },
	compute({ values }) {
		const rough = values.reduce((sum, value) => sum + value, 0) / values.length;
		// The second pass takes off what the first lost to rounding in a long sum of large numbers.
		return rough + values.reduce((sum, value) => sum + (value - rough), 0) / values.length;
	}
});

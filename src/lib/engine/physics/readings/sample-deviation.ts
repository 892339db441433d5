import { arithmetic } from '../../sources/provenance';
import { defineProcedure } from '../procedure';
import { sampleMean } from './sample-mean';

/** Standard deviation of a sample (n − 1), two values or more; plain numbers of one unit. Throws a RangeError for one. */
export const sampleDeviation = defineProcedure<{ values: readonly number[] }, number>({
	id: 'sample-deviation',
	title: { en: 'Scatter of readings', es: 'Dispersión de lecturas' },
	equation: 's = √(Σ(x − x̄)²/(n − 1))',
	source: arithmetic('definition of the standard deviation of a sample'),
	inputs: { values: 'count' },
	validFor: { values: [-1e9, 1e9] },
	compute({ values }) {
		if (values.length < 2) throw new RangeError('sample-deviation: values must be two or more');
		const mean = sampleMean.at({ values });
		return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
	}
});

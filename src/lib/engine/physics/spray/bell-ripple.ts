import { arithmetic } from '../../sources/provenance';
import { defineFormula } from '../formula';

/** Beyond this many σ between strokes the next term of the series would show. */
const WIDEST = 4;

/**
 * Thickest minus thinnest over mean of endless bell-shaped strokes: 4·exp(−2π²σ²/s²), the first term of the Poisson sum.
 * Throws a RangeError for strokes more than 4 σ apart, where gaps open and the term alone no longer holds.
 */
export const bellRipple = defineFormula({
	id: 'bell-ripple',
	title: { en: 'Ripple of bell-shaped strokes', es: 'Ondulación de pasadas en forma de campana' },
	equation: '(max − min)/mean = 4 · exp(−2π²σ²/index²)',
	source: arithmetic('Poisson summation of normal curves, first term'),
	inputs: { sigma: 'length', index: 'length' },
	gives: 'fraction',
	validFor: { sigma: [0.001, 0.5], index: [0.001, 2] },
	compute: ({ sigma, index }) => {
		if (index > WIDEST * sigma)
			throw new RangeError(
				`bell-ripple: index = ${index} must be at most ${WIDEST} sigma = ${WIDEST * sigma} (SI)`
			);
		return 4 * Math.exp(-2 * (Math.PI * (sigma / index)) ** 2);
	}
});

import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { lastWhere } from '../last-where';

/** Share of Student's t within ±√ν·tan θ, by the finite sums for whole degrees of freedom (26.7.3 and 26.7.4). */
function shareWithin(theta: number, degrees: number): number {
	const [sine, cosine] = [Math.sin(theta), Math.cos(theta)];
	const odd = degrees % 2;
	let term = odd ? cosine : 1;
	let sum = 0;
	for (let power = odd; power < degrees - 1; power += 2) {
		sum += term;
		term *= (cosine * cosine * (power + 1)) / (power + 2);
	}
	return odd ? (2 / Math.PI) * (theta + sine * sum) : sine * sum;
}

/**
 * How many standard uncertainties either side of a mean hold so much confidence, when the scatter itself was found from few
 * readings: the two-sided quantile of Student's t. Confidence 50 % to 99.99 %; `degrees` is one less than the number of
 * readings, whole, 1 to 1000. Throws a RangeError for a broken number of them.
 */
export const coverageFactor = defineFormula({
	id: 'coverage-factor',
	title: { en: 'Coverage factor for few readings', es: 'Factor de cobertura para pocas lecturas' },
	equation: 'k = t(confidence, n − 1)',
	source: cite('abramowitz-stegun', '26.7.3, 26.7.4'),
	inputs: { confidence: 'fraction', degrees: 'count' },
	gives: 'fraction',
	validFor: { confidence: [0.5, 0.9999], degrees: [1, 1000] },
	compute: ({ confidence, degrees }) => {
		if (!Number.isInteger(degrees))
			throw new RangeError(`coverage-factor: degrees = ${degrees} must be a whole number`);
		const theta = lastWhere((angle) => shareWithin(angle, degrees) <= confidence, 0, Math.PI / 2);
		return Math.sqrt(degrees) * Math.tan(theta);
	}
});

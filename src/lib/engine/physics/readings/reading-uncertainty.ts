import { cite } from '../../sources/provenance';
import { count } from '../../units/construct';
import type { Fraction, Metre } from '../../units/dimension';
import { coverageFactor } from './coverage-factor';
import { defineProcedure } from '../procedure';
import { sampleDeviation } from './sample-deviation';
import { sampleMean } from './sample-mean';

export type ReadingUncertainty = {
	readonly mean: Metre;
	/** Of one reading. */
	readonly deviation: Metre;
	/** Of the mean: s/√n. */
	readonly standard: Metre;
	readonly factor: number;
	/** Half width of the interval that holds the mean with the confidence asked for. */
	readonly expanded: Metre;
};

/**
 * What repeated readings of one place say of their own mean (Type A): the scatter, the uncertainty of the mean and, with
 * Student's t for so few, the interval around it. It does not see what is wrong with all of them alike, such as the zero of
 * the gauge. Two readings to 1001, in metres; confidence 50 % to 99.99 %.
 */
export const readingUncertainty = defineProcedure<
	{ readings: readonly Metre[]; confidence: Fraction },
	ReadingUncertainty
>({
	id: 'reading-uncertainty',
	title: { en: 'Uncertainty of repeated readings', es: 'Incertidumbre de lecturas repetidas' },
	equation: 'u = s/√n; U = t(confidence, n − 1) · u',
	source: cite('jcgm-100', '4.2.3, G.3'),
	inputs: { readings: 'length', confidence: 'fraction' },
	validFor: { readings: [-1e3, 1e3], confidence: [0.5, 0.9999] },
	compute({ readings, confidence }) {
		const deviation = sampleDeviation.at({ values: readings });
		const standard = deviation / Math.sqrt(readings.length);
		const factor = coverageFactor.at({ confidence, degrees: count(readings.length - 1) });
		return {
			mean: sampleMean.at({ values: readings }) as Metre,
			deviation: deviation as Metre,
			standard: standard as Metre,
			factor,
			expanded: (factor * standard) as Metre
		};
	}
});

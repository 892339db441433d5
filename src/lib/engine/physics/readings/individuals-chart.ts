import { cite } from '../../sources/provenance';
import { CONTROL_FACTORS, FEWEST_TO_CHART } from './control-factors';
import { controlLine, type ControlLine } from './control-line';
import { defineProcedure } from '../procedure';
import { sampleMean } from './sample-mean';

/** Mean range of two normal values over their standard deviation. */
const RANGE_OF_TWO = 1.128;

/**
 * Control chart of single values taken in turn, one a batch: limits at 2.66 mean moving ranges (3/1.128) from the mean, and
 * the ranges' own upper limit. A value outside had a cause of its own to look for; limits are no tolerance. Plain numbers of
 * one unit, in the order they were taken; fewer than ten are refused, twenty and more are better.
 */
export const individualsChart = defineProcedure<
	{ values: readonly number[] },
	{ readonly values: ControlLine; readonly ranges: ControlLine }
>({
	id: 'individuals-chart',
	title: { en: 'Control chart of single values', es: 'Carta de control de valores individuales' },
	equation: 'x̄ ± 2.66 · mean moving range (3/1.128); ranges to 3.267 · mean moving range',
	source: cite('nist-handbook', '6.3.2.2', { read: 'limits and example as held in open test suites' }),
	inputs: { values: 'count' },
	validFor: { values: [-1e9, 1e9] },
	compute({ values }) {
		if (values.length < FEWEST_TO_CHART)
			throw new RangeError(
				`individuals-chart: values must be ${FEWEST_TO_CHART} or more, not ${values.length}`
			);
		const ranges = values.slice(1).map((value, before) => Math.abs(value - values[before]!));
		const centre = sampleMean.at({ values });
		const range = sampleMean.at({ values: ranges });
		const reach = (3 * range) / RANGE_OF_TWO;
		const upper = CONTROL_FACTORS[2]!.high * range;
		return {
			values: controlLine(values, { lower: centre - reach, centre, upper: centre + reach }),
			ranges: controlLine(ranges, { lower: 0, centre: range, upper })
		};
	}
});

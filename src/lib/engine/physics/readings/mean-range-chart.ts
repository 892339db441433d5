import { cite } from '../../sources/provenance';
import { CONTROL_FACTORS, FEWEST_TO_CHART } from './control-factors';
import { controlLine, type ControlLine } from './control-line';
import { defineProcedure } from '../procedure';
import { sampleMean } from './sample-mean';

const mean = (values: readonly number[]) => sampleMean.at({ values });

function sizeOf(subgroups: readonly (readonly number[])[]) {
	const size = subgroups[0]!.length;
	if (subgroups.length < FEWEST_TO_CHART)
		throw new RangeError(
			`mean-range-chart: subgroups must be ${FEWEST_TO_CHART} or more, not ${subgroups.length}`
		);
	if (CONTROL_FACTORS[size] === undefined || subgroups.some(({ length }) => length !== size))
		throw new RangeError('mean-range-chart: every subgroup must hold the same 2 to 10 readings');
	return size;
}

/**
 * Control chart of means and ranges (X̄ and R) of subgroups taken in turn, such as the five spots of each batch. Limits at
 * three sigma from the mean range by the tabled factors. Plain numbers of one unit; ten subgroups or more (twenty and more
 * are better), each of the same size from 2 to 10.
 */
export const meanRangeChart = defineProcedure<
	{ subgroups: readonly (readonly number[])[] },
	{ readonly means: ControlLine; readonly ranges: ControlLine }
>({
	id: 'mean-range-chart',
	title: { en: 'Control chart of means and ranges', es: 'Carta de control de promedios y rangos' },
	equation: 'means: x̿ ± A₂ · R̄; ranges: D₃ · R̄ to D₄ · R̄',
	source: cite('astm-e2587', 'table of factors', { read: 'table as held in open-source libraries' }),
	inputs: { subgroups: 'count' },
	validFor: { subgroups: [-1e9, 1e9] },
	compute({ subgroups }) {
		const factors = CONTROL_FACTORS[sizeOf(subgroups)]!;
		const means = subgroups.map(mean);
		const ranges = subgroups.map((values) => Math.max(...values) - Math.min(...values));
		const [centre, range] = [mean(means), mean(ranges)];
		const reach = factors.mean * range;
		return {
			means: controlLine(means, { lower: centre - reach, centre, upper: centre + reach }),
			ranges: controlLine(ranges, { lower: factors.low * range, centre: range, upper: factors.high * range })
		};
	}
});

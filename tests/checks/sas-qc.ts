import { individualsChart } from '../../src/lib/engine/physics/readings/individuals-chart';
import { published } from './published';

const TYRES = [
	24.05, 23.99, 23.95, 23.93, 23.97, 24.02, 24.06, 24.1, 23.98, 24.03, 23.91, 24.06, 24.06, 23.96, 23.98,
	24.06, 24.01, 24.0, 23.93, 23.92, 24.09, 24.11, 24.05, 23.98, 23.98, 24.06, 24.02, 24.06, 23.97, 23.96
];
const chart = () => individualsChart.at({ values: TYRES });

export default published(
	'sas-qc',
	'belt diameters of thirty tyres, limits of individuals and moving ranges',
	{
		of: ['individuals-chart'],
		unit: 'cm',
		read: 'data and listing in the manual',
		within: {
			absolute: 1e-4,
			because: 'four decimals, from factors with more digits than the three of the tables used here'
		},
		rows: [
			{ where: 'mean', expected: 24.0083, actual: () => chart().values.centre },
			{ where: 'lower limit', expected: 23.8571, actual: () => chart().values.lower },
			{ where: 'upper limit', expected: 24.1596, actual: () => chart().values.upper },
			{ where: 'mean moving range', expected: 0.056897, within: 5e-7, actual: () => chart().ranges.centre },
			{ where: 'upper limit of ranges', expected: 0.18585, within: 5e-5, actual: () => chart().ranges.upper }
		]
	}
);

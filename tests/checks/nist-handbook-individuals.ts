import { individualsChart } from '../../src/lib/engine/physics/readings/individuals-chart';
import { published } from './published';

const FLOW = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
const chart = () => individualsChart.at({ values: FLOW });

export default published('nist-handbook', '6.3.2.2: individuals chart of ten flow rates', {
	of: ['individuals-chart'],
	unit: '',
	read: 'data and results as held in open-source test suites',
	within: { absolute: 5e-5, because: 'printed to four decimals' },
	rows: [
		{ where: 'mean', expected: 50.81, actual: () => chart().values.centre },
		{ where: 'mean moving range', expected: 1.8778, actual: () => chart().ranges.centre },
		{ where: 'upper limit', expected: 55.8041, actual: () => chart().values.upper },
		{ where: 'lower limit', expected: 45.8159, actual: () => chart().values.lower },
		{ where: 'values outside', expected: '', actual: () => chart().values.outside.join() }
	]
});

import { criticalPressureRatio } from '../../src/lib/engine/physics/air/critical-pressure-ratio';
import { ratio } from '../../src/lib/engine/units/construct';
import { published } from './published';

const upstreamOverDownstream = (heatRatio: number) =>
	1 / criticalPressureRatio.at({ heatRatio: ratio(heatRatio) });

export default published('choked-flow-faq', 'upstream over downstream pressure at which a gas chokes', {
	of: ['critical-pressure-ratio'],
	unit: ':1',
	read: 'answer to the question',
	within: { absolute: 0.05, because: 'said as about, to one decimal' },
	rows: [
		{ where: 'k = 1.09', expected: 1.7, actual: () => upstreamOverDownstream(1.09) },
		{ where: 'k = 1.41', expected: 1.9, actual: () => upstreamOverDownstream(1.41) }
	]
});

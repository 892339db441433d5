import { vapourPressure } from '../../src/lib/engine/physics/humidity/vapour-pressure';
import { celsius } from '../../src/lib/engine/units/construct';
import { published } from './published';

const frost = (degrees: number, ppm: number) => ({
	where: `${degrees} °C`,
	expected: ppm,
	actual: () => (vapourPressure.at({ dew: celsius(degrees) }) / 101_300) * 1e6
});

export default published('frost-point-table', 'parts per million by volume of water', {
	of: ['vapour-pressure', 'saturation-pressure-ice'],
	unit: 'ppm',
	read: 'table',
	within: { relative: 0.002, because: 'printed to four digits, by another equation of saturation' },
	rows: [frost(0, 6033), frost(-10, 2566), frost(-20, 1019), frost(-40, 126.8), frost(-60, 10.68)]
});

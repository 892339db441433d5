import { sieveOpening } from '../../src/lib/engine/physics/mixing/sieve-opening';
import { count } from '../../src/lib/engine/units/construct';
import { published } from './published';

const row = (number: number, micrometres: number) => ({
	where: `No. ${number}`,
	expected: micrometres,
	actual: () => sieveOpening.at({ number: count(number) }) * 1e6
});

export default published('astm-e11', 'Table 1: openings', {
	of: ['sieve-opening'],
	unit: 'µm',
	read: 'table in an open-source fluids library; the last five also in a laboratory’s guide to the standard',
	within: { absolute: 1e-6, because: 'a table, so nothing but rounding in the last bit' },
	rows: [
		row(60, 250),
		row(100, 150),
		row(120, 125),
		row(140, 106),
		row(200, 75),
		row(325, 45),
		row(400, 38),
		row(500, 25),
		row(635, 20)
	]
});

import { sieveOpening } from '../../src/lib/engine/physics/mixing/sieve-opening';
import { count } from '../../src/lib/engine/units/construct';
import { published } from './published';

const row = (number: number, micrometres: number) => ({
	where: `sieve No. ${number}`,
	expected: micrometres,
	actual: () => sieveOpening.at({ number: count(number) }) * 1e6
});

export default published('ansi-b74-12', 'sieves that grit 80 is tested on', {
	of: ['sieve-opening'],
	unit: 'µm',
	read: 'row of grit 80, 2001 edition',
	within: { absolute: 1e-6, because: 'a table, so nothing but rounding in the last bit' },
	rows: [row(50, 300), row(70, 212), row(80, 180), row(100, 150), row(120, 125)]
});

import { filmFromMass } from '../../src/lib/engine/physics/film/film-from-mass';
import type { Kilogram, KilogramPerCubicMetre } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const OUNCE = 0.45359237 / 16;
const FOOT = 0.3048;
const film = () =>
	filmFromMass.at({
		gain: (0.2 * OUNCE) as Kilogram,
		area: squareMetres(FOOT ** 2),
		density: ((446 * 0.45359237) / FOOT ** 3) as KilogramPerCubicMetre
	});

export default published('zinc-coating-article', '0.20 oz of zinc on a square foot, 446 lb/ft³', {
	of: ['film-from-mass'],
	unit: 'in',
	read: 'page 43',
	within: { absolute: 5e-6, because: 'printed to five decimals' },
	rows: [{ where: 'per side', expected: 0.00034, actual: () => unitOf('length', 'in').fromSi(film()) }]
});

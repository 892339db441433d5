import { filmFromMass } from '../../src/lib/engine/physics/film/film-from-mass';
import { grams, gramsPerMillilitre, squareMetres } from '../../src/lib/engine/units/construct';
import { published } from './published';

const micrometres = (weight: number) =>
	1e6 *
	filmFromMass.at({
		gain: grams(weight),
		area: squareMetres(1),
		density: gramsPerMillilitre(7.067)
	});

export default published('galvanizers-conversion', 'zinc of 7.067 g/m² per µm', {
	of: ['film-from-mass'],
	unit: 'µm',
	read: 'page with its examples',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{ where: '650 g/m²', expected: 91.98, actual: () => micrometres(650) },
		{ where: '530.03 g/m²', expected: 75, actual: () => micrometres(530.03) }
	]
});

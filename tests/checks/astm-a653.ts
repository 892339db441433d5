import { filmFromMass } from '../../src/lib/engine/physics/film/film-from-mass';
import { gramsPerMillilitre, squareMetres } from '../../src/lib/engine/units/construct';
import type { Kilogram } from '../../src/lib/engine/units/dimension';
import { unitOf } from '../../src/lib/engine/units/units';
import { published } from './published';

export default published('astm-a653', 'coating weight and thickness at 7.14 g/m² per µm', {
	of: ['film-from-mass'],
	unit: 'mil',
	read: 'relation as quoted on a trade page',
	within: { absolute: 0.005, because: 'printed to two decimals' },
	rows: [
		{
			where: '1.00 oz/ft²',
			expected: 1.68,
			actual: () =>
				unitOf('length', 'mil').fromSi(
					filmFromMass.at({
						gain: (0.45359237 / 16) as Kilogram,
						area: squareMetres(0.3048 ** 2),
						density: gramsPerMillilitre(7.14)
					})
				)
		}
	]
});

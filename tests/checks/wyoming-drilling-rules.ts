import { hotExplosiveLimit } from '../../src/lib/engine/physics/solvent/hot-explosive-limit';
import { celsius, fahrenheit, percent } from '../../src/lib/engine/units/construct';
import { published } from './published';

const limit = percent(2);

export default published(
	'wyoming-drilling-rules',
	'share of the lower explosive limit that counts when hot',
	{
		of: ['hot-explosive-limit'],
		unit: '1',
		read: 'definition as quoted in a trade lexicon',
		within: { absolute: 1e-9, because: 'exact as printed' },
		rows: [
			{
				where: 'up to 250 °F',
				expected: 1,
				actual: () => hotExplosiveLimit.at({ limit, gas: fahrenheit(250) }) / limit
			},
			{
				where: 'above, at 150 °C',
				expected: 0.7,
				actual: () => hotExplosiveLimit.at({ limit, gas: celsius(150) }) / limit
			}
		]
	}
);

import { cite } from '../../sources/provenance';
import { celsius, pascal } from '../../units/construct';
import { ATMOSPHERE } from '../constants';
import { defineFormula } from '../formula';
import { saturationTemperature } from './saturation-temperature';
import { vapourPressure } from './vapour-pressure';

/**
 * Dew point of line air once it has expanded into the shop, from its pressure dew point, which is what dryers and
 * ISO 8573-1 are rated by. Ideal: the vapour's share of the air stays, so its pressure falls with the total. Below the
 * triple point the answer is a frost point. At sea level.
 */
export const atmosphericDewPoint = defineFormula({
	id: 'atmospheric-dew-point',
	title: { en: 'Atmospheric dew point', es: 'Punto de rocío atmosférico' },
	equation: 'e(Td) = e(Td in the line) · p(air) / (p(gauge) + p(air))',
	source: cite('pressure-dew-point-chart', 'chart by the Sonntag equation', { read: 'chart' }, 'handbook'),
	inputs: { dew: 'temperature', gauge: 'pressure' },
	gives: 'temperature',
	validFor: { dew: [celsius(-70), celsius(60)], gauge: [0, 2e6] },
	compute: ({ dew, gauge }) =>
		saturationTemperature.at({
			vapour: pascal((vapourPressure.at({ dew }) * ATMOSPHERE) / (gauge + ATMOSPHERE))
		})
});

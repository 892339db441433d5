import { cite } from '../../sources/provenance';
import { celsius, pascal } from '../../units/construct';
import { ATMOSPHERE } from '../constants';
import { defineFormula } from '../formula';
import { saturationTemperature } from './saturation-temperature';
import { vapourPressure } from './vapour-pressure';

/**
 * Temperature below which a line of this pressure drips, from the dew point of the air that the compressor takes in:
 * the same air has its dew point far higher once it is squeezed. Ideal, as for `atmosphericDewPoint`. At sea level.
 */
export const pressureDewPoint = defineFormula({
	id: 'pressure-dew-point',
	title: { en: 'Pressure dew point', es: 'Punto de rocío a presión' },
	equation: 'e(Td in the line) = e(Td) · (p(gauge) + p(air)) / p(air)',
	source: cite('pressure-dew-point-chart', 'chart by the Sonntag equation', { read: 'chart' }, 'handbook'),
	inputs: { dew: 'temperature', gauge: 'pressure' },
	gives: 'temperature',
	validFor: { dew: [celsius(-70), celsius(40)], gauge: [0, 2e6] },
	compute: ({ dew, gauge }) =>
		saturationTemperature.at({
			vapour: pascal((vapourPressure.at({ dew }) * (gauge + ATMOSPHERE)) / ATMOSPHERE)
		})
});

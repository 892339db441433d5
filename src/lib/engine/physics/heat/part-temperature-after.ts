import { cite } from '../../sources/provenance';
import { kelvin, seconds } from '../../units/construct';
import { defineFormula } from '../formula';
import { lastWhere } from '../last-where';
import { BODY, BODY_RANGE, TEMPERATURE } from './lumped-body';
import { radiantHeatUpTime } from './radiant-heat-up-time';

/**
 * Temperature of a whole part after a time in air and walls of one temperature: `radiantHeatUpTime` read backwards, by
 * halving the interval between start and air. Only where the Biot number is below 0.1.
 */
export const partTemperatureAfter = defineFormula({
	id: 'part-temperature-after',
	title: { en: 'Part temperature after a time', es: 'Temperatura de la pieza después de un tiempo' },
	equation: 'T where t(T) is the time spent',
	source: cite('incropera-heat', 'eq. 1.9 and ch. 5', { read: 'as worked in example 5.3' }, 'handbook'),
	inputs: { ...BODY, start: 'temperature', air: 'temperature', emissivity: 'fraction', spent: 'duration' },
	gives: 'temperature',
	validFor: {
		...BODY_RANGE,
		start: TEMPERATURE,
		air: TEMPERATURE,
		emissivity: [0, 1],
		spent: [0, 86_400]
	},
	compute: ({ spent, ...body }) =>
		lastWhere(
			(reached) => radiantHeatUpTime.at({ ...body, target: kelvin(reached) }) <= seconds(spent),
			body.start,
			body.air
		)
});

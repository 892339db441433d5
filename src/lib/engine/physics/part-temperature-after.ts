import { cite } from '../sources/provenance';
import { kelvin, seconds } from '../units/construct';
import { defineFormula } from './formula';
import { BODY, BODY_RANGE, TEMPERATURE } from './lumped-body';
import { radiantHeatUpTime } from './radiant-heat-up-time';

const HALVINGS = 60;

/**
 * Temperature of a whole part after a time in air and walls of one temperature: `radiantHeatUpTime` read backwards, by
 * halving the interval between start and air.
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
	compute({ spent, ...body }) {
		let [near, far] = [body.start as number, body.air as number];
		for (let halving = 0; halving < HALVINGS; halving++) {
			const middle = (near + far) / 2;
			if (middle === near || middle === far) break;
			if (radiantHeatUpTime.at({ ...body, target: kelvin(middle) }) <= seconds(spent)) near = middle;
			else far = middle;
		}
		return near;
	}
});

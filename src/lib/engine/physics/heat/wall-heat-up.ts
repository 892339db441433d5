import { cite } from '../../sources/provenance';
import { coreHeatUpTime } from './core-heat-up-time';
import { defineFormula } from '../formula';
import { heatModel } from './heat-model';
import { heatUpTime } from './heat-up-time';
import { PATH, PATH_RANGE } from './lumped-body';
import { WALL, WALL_RANGE } from './wall-body';

/**
 * Time until the slowest spot of a wall comes from `start` to `target`: of the whole wall at once below Biot number 0.1,
 * of its core by conduction from there on (plastics, thick blocks). Other shapes count as a wall of the same volume over
 * surface, which is exact while they heat as one and an estimate beyond.
 */
export const wallHeatUp = defineFormula({
	id: 'wall-heat-up',
	title: { en: 'Heat-up time of a wall', es: 'Tiempo de calentamiento de una pared' },
	equation: 't = (ρ · c · L/h) · ln((T∞ − T₀)/(T∞ − T)) while h · L/k < 0.1, else of the core by conduction',
	source: cite('holman-heat', 'ch. 4', { read: 'as worked in examples 4-1 and 4-6' }, 'handbook'),
	inputs: { ...WALL, ...PATH },
	gives: 'duration',
	validFor: { ...WALL_RANGE, ...PATH_RANGE },
	compute: (wall) => (heatModel.at(wall).model === 'lumped' ? heatUpTime : coreHeatUpTime).at(wall)
});

import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { approach, PATH, PATH_RANGE } from './lumped-body';
import { scalesOf, WALL, WALL_RANGE } from './wall-body';
import { fourierUntil } from './wall-series';

/**
 * Time until the core of a plane wall comes from `start` to `target` in air of one temperature, heating or cooling, by
 * the whole series. At any Biot number; below 0.1 it says what the lumped formula says.
 */
export const coreHeatUpTime = defineFormula({
	id: 'core-heat-up-time',
	title: { en: 'Heat-up time of the core', es: 'Tiempo de calentamiento del núcleo' },
	equation: 't where Σ C · exp(−ζ² · α · t/L²) = (T∞ − T)/(T∞ − T₀)',
	source: cite('incropera-heat', 'eq. 5.39', { read: 'as worked in example 5.4' }, 'handbook'),
	inputs: { ...WALL, ...PATH },
	gives: 'duration',
	validFor: { ...WALL_RANGE, ...PATH_RANGE },
	compute({ start, air, target, ...wall }) {
		const left = Math.exp(-approach({ start, air, target }));
		if (target === start) return 0;
		const { biot, seconds } = scalesOf(wall);
		return fourierUntil(biot, left, 0) * seconds;
	}
});

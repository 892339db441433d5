import { cite } from '../../sources/provenance';
import { defineFormula } from '../formula';
import { TEMPERATURE } from './lumped-body';
import { scalesOf, WALL, WALL_RANGE } from './wall-body';
import { EARLIEST, wallDifference } from './wall-series';

/**
 * Temperature at a place in a plane wall, all of it at `start` before, after a time in air of one temperature: 0 is the
 * core, 1 the face. By the whole series, so at any Biot number. Throws a RangeError before Fourier number 0.005, when
 * only the skin has noticed.
 */
export const wallTemperatureAfter = defineFormula({
	id: 'wall-temperature-after',
	title: { en: 'Temperature inside a wall', es: 'Temperatura dentro de una pared' },
	equation: 'T = T∞ + (T₀ − T∞) · Σ C · exp(−ζ² · Fo) · cos(ζ · x/L)',
	source: cite('incropera-heat', 'eq. 5.39', { read: 'as worked in example 5.4' }, 'handbook'),
	inputs: { ...WALL, start: 'temperature', air: 'temperature', spent: 'duration', place: 'fraction' },
	gives: 'temperature',
	validFor: { ...WALL_RANGE, start: TEMPERATURE, air: TEMPERATURE, spent: [0, 604_800], place: [0, 1] },
	compute({ start, air, spent, place, ...wall }) {
		const { biot, seconds } = scalesOf(wall);
		const fourier = spent / seconds;
		if (!(fourier >= EARLIEST))
			throw new RangeError(
				`wall-temperature-after: spent = ${spent} is too short for this wall, at least ${EARLIEST * seconds} (SI)`
			);
		return air + (start - air) * wallDifference(biot)(fourier, place);
	}
});

import { cite } from '../../sources/provenance';
import type { SquareMetre } from '../../units/dimension';
import { defineProcedure } from '../procedure';

const FOOT_SQUARED = 0.3048 ** 2;
export const SPOTS_PER_AREA = 5;
export const READINGS_PER_SPOT = 3;

const areasOn = (squareFeet: number) =>
	squareFeet <= 300 ? Math.ceil(squareFeet / 100) : 3 + Math.ceil((squareFeet - 1000) / 1000);

/**
 * Areas of 10 m² (100 ft²) to measure on so much coated surface, with their spots and readings. Written for structures: a
 * shop that coats small parts agrees with its customer how many parts stand for a lot.
 */
export const samplingPlan = defineProcedure<
	{ coated: SquareMetre },
	{ readonly areas: number; readonly spots: number; readonly readings: number }
>({
	id: 'sampling-plan',
	title: { en: 'How much film to measure', es: 'Cuánta película medir' },
	equation:
		'to 300 ft² each 100 ft²; to 1000 ft² three areas; then one more per 1000 ft²; 5 spots · 3 readings',
	source: cite('sspc-pa-2', '§8', { read: 'stored text of 2012/2015' }),
	inputs: { coated: 'area' },
	validFor: { coated: [1e-4, 1e6] },
	compute({ coated }) {
		// An area of exactly 300 ft² must not need a fourth for a rounding error in the last digit.
		const areas = areasOn(coated / FOOT_SQUARED - 1e-6);
		const spots = areas * SPOTS_PER_AREA;
		return { areas, spots, readings: spots * READINGS_PER_SPOT };
	}
});

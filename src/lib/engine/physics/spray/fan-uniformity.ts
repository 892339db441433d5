import { cite } from '../../sources/provenance';
import type { Count, Fraction } from '../../units/dimension';
import { evenness, type Evenness } from './evenness';
import { fanShape } from './fan-shape';
import { defineProcedure } from '../procedure';

const SAMPLES = 1000;

/**
 * How even the film of endless parallel strokes is, from a fan of β shape (β = 2 is the parabola of the literature), where a
 * single stroke is 1 thick in its middle. A teaching model: which overlap is best depends on the fan, and 50 % is shop
 * practice, not its optimum. Overlap 0 to 0.9, β 1.5 to 10.
 */
export const fanUniformity = defineProcedure<{ overlap: Fraction; beta: Count }, Evenness>({
	id: 'fan-uniformity',
	title: { en: 'Evenness of overlapping strokes', es: 'Uniformidad de pasadas traslapadas' },
	equation: 'film = Σ (1 − (2(x − k · index)/w)²)^(β − 1), over one index = w · (1 − overlap)',
	source: cite('uniform-gun-velocity', 'model of the abstract', { read: 'abstract' }, 'paper'),
	inputs: { overlap: 'fraction', beta: 'count' },
	validFor: { overlap: [0, 0.9], beta: [1.5, 10] },
	compute({ overlap, beta }) {
		const index = 1 - overlap;
		const reach = Math.ceil(1 / index);
		const film = Array.from({ length: SAMPLES }, (_, sample) => {
			const x = (index * sample) / SAMPLES;
			let sum = 0;
			for (let stroke = -reach; stroke <= reach; stroke++) sum += fanShape(x - stroke * index, beta);
			return sum;
		});
		return evenness(film);
	}
});

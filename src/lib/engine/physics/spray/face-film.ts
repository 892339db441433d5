import { cite } from '../../sources/provenance';
import type { Count, Metre, SquareMetre } from '../../units/dimension';
import { evenness, type Evenness } from './evenness';
import { fanShapeArea, fanShape } from './fan-shape';
import { defineProcedure } from '../procedure';

/** Places across the face, its edges among them. */
const PLACES = 201;

export type FaceFilm = {
	/** Dry film at even distances from one edge to the other. */
	readonly film: readonly Metre[];
} & Evenness;

/**
 * Dry film across a face after one pass of parallel strokes, the middle one (or two) over its middle, from a fan of β shape. A
 * teaching model: it shows how the edges thin where the last stroke does not run off the face. `deposit` is the cross-section
 * of one stroke, `index` the distance from one to the next; strokes whole, 1 to 1000. Lengths in metres. Throws a RangeError for
 * a broken number of strokes, and where not one reaches the face.
 */
export const faceFilm = defineProcedure<
	{ face: Metre; fan: Metre; index: Metre; strokes: Count; deposit: SquareMetre; beta: Count },
	FaceFilm
>({
	id: 'face-film',
	title: { en: 'Film across a face', es: 'Película a lo ancho de una cara' },
	equation: 'DFT(x) = Σ film of stroke k at x − (k − (n + 1)/2) · index',
	source: cite('uniform-gun-velocity', 'model of the abstract', { read: 'abstract' }, 'paper'),
	inputs: {
		face: 'length',
		fan: 'length',
		index: 'length',
		strokes: 'count',
		deposit: 'area',
		beta: 'count'
	},
	validFor: {
		face: [0.001, 20],
		fan: [0.005, 1],
		index: [0.0005, 1],
		strokes: [1, 1000],
		deposit: [1e-12, 1e-3],
		beta: [1.5, 10]
	},
	compute({ face, fan, index, strokes, deposit, beta }) {
		if (!Number.isInteger(strokes))
			throw new RangeError(`face-film: strokes = ${strokes} must be a whole number`);
		const middle = deposit / (fan * fanShapeArea(beta));
		const film = Array.from({ length: PLACES }, (_, place) => {
			const x = face * (place / (PLACES - 1) - 0.5);
			let sum = 0;
			for (let stroke = 0; stroke < strokes; stroke++)
				sum += fanShape((x - (stroke - (strokes - 1) / 2) * index) / fan, beta);
			return (sum * middle) as Metre;
		});
		const even = evenness(film);
		if (even.mean === 0) throw new RangeError('face-film: no stroke reaches the face');
		return { film, ...even };
	}
});

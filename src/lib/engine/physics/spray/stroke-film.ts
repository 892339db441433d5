import { cite } from '../../sources/provenance';
import type { Provenance } from '../../sources/provenance';
import { fanShape, fanShapeArea } from './fan-shape';
import { defineFormula } from '../formula';

const SOURCE: Provenance = cite(
	'deposition-models',
	'review of models',
	{ read: 'names and shapes of the models' },
	'paper'
);
const DEPOSIT: [number, number] = [0, 1e-3];
const ACROSS: [number, number] = [-1, 1];
const WIDTH: [number, number] = [0.005, 1];

/** Normal density, without its 1/σ. */
const bell = (z: number) => Math.exp(-(z ** 2) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Teaching models of the dry film one stroke leaves at a distance x from its middle. Each holds the same coating, the cross-
 * section of `stroke-deposit`, so the film summed across the stroke is that. A fan of width w is a parabola or a β shape;
 * the bell has no edge, and about six σ of it show. Real fans are read off a sprayed card.
 */
export const strokeFilm = {
	parabola: defineFormula({
		id: 'stroke-film-parabola',
		title: { en: 'Film across one stroke, parabola', es: 'Película a lo ancho de una pasada, parábola' },
		equation: 'DFT = 1.5 · S/w · (1 − (2x/w)²)',
		source: SOURCE,
		inputs: { deposit: 'area', x: 'length', width: 'length' },
		gives: 'length',
		validFor: { deposit: DEPOSIT, x: ACROSS, width: WIDTH },
		compute: ({ deposit, x, width }) => (1.5 * deposit * fanShape(x / width, 2)) / width
	}),
	beta: defineFormula({
		id: 'stroke-film-beta',
		title: { en: 'Film across one stroke, β shape', es: 'Película a lo ancho de una pasada, forma β' },
		equation: 'DFT = c · S/w · (1 − (2x/w)²)^(β − 1), c making the whole stroke S',
		source: SOURCE,
		inputs: { deposit: 'area', x: 'length', width: 'length', beta: 'count' },
		gives: 'length',
		validFor: { deposit: DEPOSIT, x: ACROSS, width: WIDTH, beta: [1.5, 10] },
		compute: ({ deposit, x, width, beta }) =>
			(deposit * fanShape(x / width, beta)) / (width * fanShapeArea(beta))
	}),
	bell: defineFormula({
		id: 'stroke-film-bell',
		title: { en: 'Film across one stroke, bell', es: 'Película a lo ancho de una pasada, campana' },
		equation: 'DFT = S/(σ · √(2π)) · exp(−x²/(2σ²))',
		source: SOURCE,
		inputs: { deposit: 'area', x: 'length', sigma: 'length' },
		gives: 'length',
		validFor: { deposit: DEPOSIT, x: ACROSS, sigma: [0.001, 0.5] },
		compute: ({ deposit, x, sigma }) => (deposit * bell(x / sigma)) / sigma
	})
};

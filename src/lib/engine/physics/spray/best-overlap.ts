import { cite } from '../../sources/provenance';
import { count, fraction } from '../../units/construct';
import type { Count, Fraction } from '../../units/dimension';
import type { Evenness } from './evenness';
import { fanUniformity } from './fan-uniformity';
import { defineProcedure } from '../procedure';

const COARSE = 0.01;
const FINE = 0.001;

function evenest(beta: number, from: number, to: number, step: number): number {
	let [best, least] = [from, Infinity];
	const steps = Math.round((to - from) / step);
	for (let at = 0; at <= steps; at++) {
		const overlap = Math.min(from + at * step, to);
		const { variation } = fanUniformity.at({ overlap: fraction(overlap), beta: count(beta) });
		if (variation < least) [best, least] = [overlap, variation];
	}
	return best;
}

/**
 * The overlap between two limits that makes the film of a β-shaped fan most even (least standard deviation over mean), to
 * 0.1 %, by trying them. Below 50 % no more than two strokes meet; above it more do and several overlaps are nearly as good.
 * Limits 0 to 0.9; throws a RangeError where they are the wrong way round. A teaching model.
 */
export const bestOverlap = defineProcedure<
	{ beta: Count; from: Fraction; to: Fraction },
	{ readonly overlap: Fraction } & Evenness
>({
	id: 'best-overlap',
	title: { en: 'Overlap for the most even film', es: 'Traslape para la película más uniforme' },
	equation: 'overlap where standard deviation/mean is least',
	source: cite('uniform-gun-velocity', 'result of the abstract', { read: 'abstract' }, 'paper'),
	inputs: { beta: 'count', from: 'fraction', to: 'fraction' },
	validFor: { beta: [1.5, 10], from: [0, 0.9], to: [0, 0.9] },
	compute({ beta, from, to }) {
		if (from > to) throw new RangeError(`best-overlap: from = ${from} must not be above to = ${to}`);
		const near = evenest(beta, from, to, COARSE);
		const overlap = fraction(evenest(beta, Math.max(from, near - COARSE), Math.min(to, near + COARSE), FINE));
		return { overlap, ...fanUniformity.at({ overlap, beta }) };
	}
});

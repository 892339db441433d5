import type { Shape } from '../../job/part';
import { fitGrowth } from '../../physics/film/fit-growth';
import { wantedFilm } from '../../plan/wanted-film';
import { shopValue } from '../../shop/shop';
import { arithmetic } from '../../sources/provenance';
import type { Rule } from '../rule';

const ROUND: readonly Shape[] = ['tube', 'bar', 'ring'];

export default {
	id: 'growth-on-diameter',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'A diameter grows by two films', es: 'Un diámetro crece dos películas' },
	why: {
		en: 'The film lies on both sides of a diameter, so it takes twice its thickness off the clearance.',
		es: 'La película queda a ambos lados del diámetro, así que le quita a la holgura el doble de su espesor.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: arithmetic('a film lies on either side of a diameter'),
	lesson: 'taking-apart#growth-on-diameter',
	breaks: { low: ['over-thick'] },
	outcome: {
		en: 'The part binds in its bore, or is turned away though it would have fitted.',
		es: 'La pieza se traba en su agujero, o se rechaza aunque habría entrado.'
	},
	evidence: {
		en: 'Measure the diameter before and after with a micrometer.',
		es: 'Mida el diámetro antes y después con un micrómetro.'
	},
	field: 'diameter-growth',
	applies: (seen) =>
		seen.job.parts.some(({ shape }) => ROUND.includes(shape)) && wantedFilm(seen) !== undefined,
	expects(seen) {
		const value = fitGrowth.diameter.of({ dry: wantedFilm(seen)!.max });
		const tolerance = shopValue(seen.shop, 'growth.tolerance');
		return { kind: 'computed', value, tolerance, amber: value.value * tolerance.value };
	}
} satisfies Rule;

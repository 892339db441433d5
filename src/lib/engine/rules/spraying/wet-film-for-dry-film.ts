import { wetFilm } from '../../physics/film/wet-film';
import { middleFilm } from '../../plan/middle-film';
import { remembered } from '../../plan/remembered';
import { sheetValue, sheetWindow, type Situation } from '../../plan/situation';
import { constant, workedOut } from '../../plan/trace';
import { shopValue } from '../../shop/shop';
import { arithmetic, cite } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import type { Rule } from '../rule';

const ID = 'wet-film-for-dry-film';
const UNTHINNED = constant(ID, 'fraction', fraction(0), arithmetic('as the question says'), {
	en: 'No thinner',
	es: 'Sin diluyente'
});

const wetFilmPerCoat = remembered((seen: Situation) => {
	const [film, solids] = [middleFilm(seen), sheetValue(seen, 'volume-solids')];
	const fewest = sheetWindow(seen, 'coats')?.min;
	if (!film || !solids || !fewest) return undefined;
	const label = { en: 'Dry film per coat', es: 'Película seca por mano' };
	const dry = workedOut(ID, 'length', film.value / fewest.value, label, { film, fewest });
	return wetFilm.of({ dry, solids, thinner: UNTHINNED });
});

export default {
	id: 'wet-film-for-dry-film',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: { en: 'Wet film for the wanted dry film', es: 'Película húmeda para la película seca pedida' },
	why: {
		en: 'Only the solids stay. Wet film times solids is what the gauge will read after the oven, so it is set before the first pass.',
		es: 'Solo quedan los sólidos. Película húmeda por sólidos es lo que dirá el medidor tras el horno; por eso se fija antes de la primera pasada.'
	},
	severity: 'quality',
	authority: 'tool',
	provenance: cite('astm-d4414', 'significance and use', { read: 'significance clause of D4414' }),
	lesson: 'wet-film#wet-film-for-dry-film',
	breaks: { low: ['pinpoint-rust', 'holiday', 'dry-spray'], high: ['runs', 'solvent-pop', 'over-thick'] },
	outcome: {
		en: 'Too thin: rust and wear through the film. Too thick: runs, burst bubbles, parts that bind.',
		es: 'Muy delgada: óxido y desgaste. Muy gruesa: escurridos, burbujas reventadas, piezas que se traban.'
	},
	evidence: {
		en: 'Weigh a foil sprayed beside the parts, or use the comb as a trend.',
		es: 'Pese una lámina aplicada junto a las piezas, o use el peine como tendencia.'
	},
	field: 'wet-film',
	applies: (seen) => wetFilmPerCoat(seen) !== undefined,
	expects(seen) {
		const value = wetFilmPerCoat(seen)!;
		const tolerance = shopValue(seen.shop, 'film.wet-tolerance');
		return { kind: 'computed', value, tolerance, amber: value.value * 0.1 };
	}
} satisfies Rule;

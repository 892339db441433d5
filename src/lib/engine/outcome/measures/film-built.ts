import { dryFilm } from '../../physics/film/dry-film';
import { sheetValue } from '../../plan/situation';
import { workedOut, type Traced } from '../../plan/trace';
import { wantedFilm } from '../../plan/wanted-film';
import type { OutcomeMeasure } from '../outcome';
import { allSet, amount, windowBy, type PutIn } from '../put-in';
import { standingOf } from '../standing';
import { surplusThinner } from './surplus-thinner';

const RULE = 'number-of-coats';
const [THINNEST, THICKEST] = dryFilm.validFor.wet;
const [, MOST_THINNER] = dryFilm.validFor.thinner;

/**
 * Coats of the wet film that was asked for, which is the one in the sheet's fewest. More coats that the sheet allows
 * share out the same film; every one beyond or missing adds or takes one.
 */
function coatsLaid(given: PutIn): Traced<'count'> | undefined {
	const [set, window] = [amount(given, 'coats', 'count'), windowBy(given, RULE, 'count')];
	if (!set || !window) return undefined;
	const { min: fewest, max: most } = window;
	const off = Math.max(0, set.value - most.value) - Math.max(0, fewest.value - set.value);
	const label = { en: 'Coats of this wet film', es: 'Manos de esta película húmeda' };
	return workedOut(RULE, 'count', Math.max(0, fewest.value + off), label, { set, fewest, most });
}

/** Dry film that the wet film, the coats and any thinner too many leave on the part. */
export function filmBuilt(given: PutIn): OutcomeMeasure | undefined {
	if (!allSet(given, ['wet-film', 'coats', 'thinner-share'])) return undefined;
	const [wet, coats] = [amount(given, 'wet-film', 'length'), coatsLaid(given)];
	const [wanted, solids] = [wantedFilm(given.seen), sheetValue(given.seen, 'volume-solids')];
	if (!wet || !coats || !wanted || !solids) return undefined;
	const measure = { id: 'film-built', kind: 'quantity', wanted } as const;
	const thinner = surplusThinner(given);
	const tooThin = wet.value < THINNEST || thinner.value > MOST_THINNER;
	if (tooThin || wet.value > THICKEST)
		return { ...measure, value: null, degree: 3, side: tooThin ? 'low' : 'high' };
	const perCoat = dryFilm.of({ wet, solids, thinner });
	const label = { en: 'Dry film built', es: 'Película seca obtenida' };
	const value = workedOut(RULE, 'length', perCoat.value * coats.value, label, { coats, perCoat });
	return { ...measure, value, ...standingOf(value.value, wanted.min.value, wanted.max.value, 'length') };
}

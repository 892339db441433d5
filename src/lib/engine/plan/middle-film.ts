import type { TracedWindow } from '../shop/shop';
import { remembered } from './remembered';
import { sheetWindow, type Situation } from './situation';
import { workedOut, type Traced } from './trace';
import { wantedFilm } from './wanted-film';

/** What two windows leave of each other; the first where they do not meet. */
function overlap(one: TracedWindow<'length'>, other: TracedWindow<'length'>): TracedWindow<'length'> {
	const min = one.min.value >= other.min.value ? one.min : other.min;
	const max = one.max.value <= other.max.value ? one.max : other.max;
	return min.value <= max.value ? { min, max } : one;
}

/**
 * Middle of the dry film to lay on this job, which amounts are worked out for: of a drawn film only what the data sheet
 * can give as well. Undefined where no film is known.
 */
export const middleFilm = remembered((seen: Situation): Traced<'length'> | undefined => {
	const wanted = wantedFilm(seen);
	if (!wanted) return undefined;
	const film = overlap(wanted, sheetWindow(seen, 'dry-film') ?? wanted);
	const label = { en: 'Middle of the wanted dry film', es: 'Centro de la película seca pedida' };
	return workedOut('wet-film-for-dry-film', 'length', (film.min.value + film.max.value) / 2, label, film);
});

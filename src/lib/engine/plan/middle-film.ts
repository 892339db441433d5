import type { Situation } from './situation';
import { workedOut, type Traced } from './trace';
import { wantedFilm } from './wanted-film';

/** Middle of the dry film to lay on this job, which amounts are worked out for; undefined where no film is known. */
export function middleFilm(seen: Situation): Traced<'length'> | undefined {
	const film = wantedFilm(seen);
	if (!film) return undefined;
	const label = { en: 'Middle of the wanted dry film', es: 'Centro de la película seca pedida' };
	return workedOut('wet-film-for-dry-film', 'length', (film.min.value + film.max.value) / 2, label, film);
}

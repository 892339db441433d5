import type { TracedWindow } from '../shop/shop';
import { remembered } from './remembered';
import { sheetWindow, type Situation } from './situation';
import { fromJob } from './trace';

/** The film on the customer's drawing; undefined where there is none or its basis is not said. */
export function drawnFilm({ job }: Situation): TracedWindow<'length'> | undefined {
	if (job.film?.basis !== 'per-side') return undefined;
	const label = { en: 'Film on the drawing, per side', es: 'Película en el plano, por cara' };
	return {
		min: fromJob('film.min', 'length', job.film.min, label),
		max: fromJob('film.max', 'length', job.film.max, label)
	};
}

/**
 * The dry film per side to lay on this job: the drawing's, which outranks the data sheet, or the sheet's where no film
 * is drawn. Undefined where the drawing leaves its basis open or both are silent.
 */
export const wantedFilm = remembered((seen: Situation) =>
	seen.job.film ? drawnFilm(seen) : sheetWindow(seen, 'dry-film')
);

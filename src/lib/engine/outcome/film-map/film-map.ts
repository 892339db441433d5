import type { Job } from '../../job/job';
import { evenness } from '../../physics/spray/evenness';
import type { Plan } from '../../plan/plan';
import { plannedField } from '../../plan/planned-field';
import { sheetValue, situation } from '../../plan/situation';
import { workedOut, type Traced } from '../../plan/trace';
import { wantedFilm } from '../../plan/wanted-film';
import { windowOf } from '../../plan/window-of';
import { shopValue, type Shop, type TracedWindow } from '../../shop/shop';
import type { Fraction, Metre } from '../../units/dimension';
import type { Standing } from '../outcome';
import { layCoat, type Coat } from './coat';
import { fanLaid } from './fan-laid';
import { filmClass, filmVerdict, spotWindow, type FilmClass, type FilmVerdict } from './film-places';
import { beyondReach, type GunSettings } from './gun-controls';
import { landingOf } from './landing';
import { tracedGun } from './traced-gun';

/** The film a gun lays on a witness panel. A teaching model: it orders consequences, it does not predict a panel. */
export type FilmMap = {
	readonly model: 'teaching';
	/** Dry film of all coats at even distances from one edge to the other, the way the strokes step. */
	readonly film: readonly Metre[];
	/** How each of these places stands. */
	readonly places: readonly FilmClass[];
	readonly lowest: Metre;
	readonly highest: Metre;
	readonly mean: Traced<'length'>;
	/** Highest less lowest, over the mean. */
	readonly unevenness: Fraction;
	/** Mean wet film of one coat, unthinned. */
	readonly wet: Traced<'length'>;
	readonly wanted: TracedWindow<'length'>;
	/** What a single spot may show. */
	readonly spot: TracedWindow<'length'>;
	/** Strokes of one coat; every coat follows the strokes of the one before. */
	readonly strokes: Coat['strokes'];
	/** From one stroke to the next. */
	readonly index: Coat['index'];
	readonly verdict: FilmVerdict;
	readonly landing: Standing;
};

/**
 * What a gun set like this lays for this job, edges of the panel included. The arm is even and square to the panel, and
 * the share of paint that reaches it is the shop's. Undefined where job and sheet leave film or solids open, or the plan
 * asks for no gun distance.
 * @throws RangeError for a setting beyond the reach of the bench
 */
export function filmMap(
	settings: GunSettings,
	{ plan, job, shop }: { readonly plan: Plan; readonly job: Job; readonly shop: Shop }
): FilmMap | undefined {
	const beyond = beyondReach(settings);
	if (beyond) throw new RangeError(`film-map: ${beyond} = ${settings[beyond]} is beyond the bench (SI)`);
	const seen = situation(job, shop);
	const [wanted, solids] = seen ? [wantedFilm(seen), sheetValue(seen, 'volume-solids')] : [];
	const held = plannedField(plan, 'gun-distance');
	if (!seen || !wanted || !solids || !held) return undefined;

	const { distance, coats, ...gun } = tracedGun(settings);
	const laid = fanLaid(gun.fan, distance, windowOf(held.demands));
	const coat = layCoat({ ...gun, laid, solids, transfer: shopValue(shop, 'spray.transfer') });
	const film = coat.film.map((one) => (one * coats.value) as Metre);
	const mean = workedOut(
		'number-of-coats',
		'length',
		coat.mean.value * coats.value,
		{ en: 'Mean dry film on the panel', es: 'Película seca media en el panel' },
		{ coats, perCoat: coat.mean }
	);
	const wet = workedOut(
		'wet-film-for-dry-film',
		'length',
		coat.mean.value / solids.value,
		{ en: 'Mean wet film of one coat, unthinned', es: 'Película húmeda media de una mano, sin diluir' },
		{ perCoat: coat.mean, solids }
	);
	const spot = spotWindow(wanted);
	const places = film.map((one) => filmClass(one, wanted, spot));
	return {
		model: 'teaching',
		film,
		places,
		lowest: Math.min(...film) as Metre,
		highest: Math.max(...film) as Metre,
		mean,
		unevenness: evenness(film).peakToPeak as Fraction,
		wet,
		wanted,
		spot,
		strokes: coat.strokes,
		index: coat.index,
		verdict: filmVerdict(mean.value, wanted, places),
		landing: landingOf(settings, plan, seen)
	};
}

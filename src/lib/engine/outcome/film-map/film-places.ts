import { spotLimits } from '../../physics/readings/spot-limits';
import type { Traced } from '../../plan/trace';
import type { TracedWindow } from '../../shop/shop';
import { SAME } from '../../units/same';

/**
 * How a place of the panel stands to the wanted film, thinnest first: `thin` and `thick` are outside it and still inside
 * what a single spot may show.
 */
export const FILM_CLASSES = ['too-thin', 'thin', 'inside', 'thick', 'too-thick'] as const;
export type FilmClass = (typeof FILM_CLASSES)[number];

/** `uneven`: right on average, with places that no spot may show. */
export type FilmVerdict = 'accepted' | 'thin' | 'thick' | 'uneven';

/** What single spots may show where this film is wanted. */
export const spotWindow = ({ min, max }: TracedWindow<'length'>): TracedWindow<'length'> => ({
	min: spotLimits.lowest.of({ specified: min }),
	max: spotLimits.highest.of({ specified: max })
});

const below = (value: number, { value: limit }: Traced) => value < limit * (1 - SAME);
const above = (value: number, { value: limit }: Traced) => value > limit * (1 + SAME);

/** Sorts one reading, SI. */
export function filmClass(
	value: number,
	wanted: TracedWindow<'length'>,
	spot: TracedWindow<'length'>
): FilmClass {
	if (below(value, spot.min)) return 'too-thin';
	if (below(value, wanted.min)) return 'thin';
	if (above(value, spot.max)) return 'too-thick';
	return above(value, wanted.max) ? 'thick' : 'inside';
}

/** As an area is accepted at inspection: the mean inside the wanted film, and every place inside what a spot may show. */
export function filmVerdict(
	mean: number,
	wanted: TracedWindow<'length'>,
	places: readonly FilmClass[]
): FilmVerdict {
	if (below(mean, wanted.min)) return 'thin';
	if (above(mean, wanted.max)) return 'thick';
	return places.includes('too-thin') || places.includes('too-thick') ? 'uneven' : 'accepted';
}

import { FILM_CLASSES, TEACHING_GUN, type FilmMap } from '$lib/engine';
import { filmMap as messages, outcome } from '$lib/i18n';
import { derivationView } from '../derivation-view';
import { quantityText, windowText } from '../quantity-text';
import type { Reader } from '../reader';

/** Readings listed across the panel, both edges among them. */
const LISTED = 11;

/** The drawing keeps this much room beyond the thickest film or limit. */
const ROOM = 1.08;

const SIGNS = { 0: 'inside', 1: 'near', 2: 'outside', 3: 'outside' } as const;

const drawn = (value: number) => Math.round(value * 1e4) / 1e4;

/** Neighbours of one class as one band; a place stands for half the way to each neighbour. */
function bandsOf({ places }: FilmMap) {
	const step = 1 / (places.length - 1);
	const start = (at: number) => drawn(Math.max(0, (at - 0.5) * step));
	const begins = places.flatMap((one, at) => (at === 0 || places[at - 1] !== one ? [at] : []));
	return begins.map((at, band) => ({
		kind: places[at]!,
		from: start(at),
		to: begins[band + 1] === undefined ? 1 : start(begins[band + 1]!)
	}));
}

/** Middle of each stroke, in panels from its first edge; the outermost may lie past it. */
const strokesAt = ({ strokes, index }: FilmMap) =>
	Array.from({ length: strokes.value }, (_, stroke) =>
		drawn(0.5 + ((stroke - (strokes.value - 1) / 2) * index.value) / TEACHING_GUN.across.value)
	);

function numbersOf(map: FilmMap, reader: Reader) {
	const words = messages[reader.lang].found;
	const film = (value: number) => quantityText(value, 'length', reader);
	const limits = ({ min, max }: FilmMap['wanted']) =>
		windowText({ min: min.value, max: max.value }, 'length', reader);
	const texts = {
		mean: film(map.mean.value),
		wanted: limits(map.wanted),
		lowest: film(map.lowest),
		highest: film(map.highest),
		spot: limits(map.spot),
		unevenness: quantityText(map.unevenness, 'fraction', reader),
		wet: film(map.wet.value),
		strokes: quantityText(map.strokes.value, 'count', reader),
		index: film(map.index.value)
	};
	return Object.entries(texts).map(([id, value]) => ({ id, label: words[id as keyof typeof texts], value }));
}

function readingsOf({ film, places }: FilmMap, reader: Reader) {
	return Array.from({ length: LISTED }, (_, reading) => {
		const at = Math.round((reading * (film.length - 1)) / (LISTED - 1));
		return {
			at: quantityText((TEACHING_GUN.across.value * at) / (film.length - 1), 'length', reader),
			film: quantityText(film[at]!, 'length', reader),
			stands: messages[reader.lang].class[places[at]!]
		};
	});
}

function landingText({ landing: { degree, side } }: FilmMap, { lang }: Reader) {
	const words = outcome[lang];
	const stands = degree && side ? words.stands[degree](words[side].wetness) : words.asWanted;
	return messages[lang].landing(stands);
}

/** The film map in the reader's words and units. What is drawn is in shares of the panel and of the drawing's width. */
export function filmMapView(map: FilmMap, reader: Reader) {
	const words = messages[reader.lang];
	const widest = Math.max(map.highest, map.spot.max.value) * ROOM;
	const bands = bandsOf(map);
	const share = (kind: string) =>
		bands.reduce((sum, band) => (band.kind === kind ? sum + band.to - band.from : sum), 0);
	const { across, along, shape } = TEACHING_GUN;
	const size = (side: typeof across) => quantityText(side.value, 'length', reader);
	return {
		title: words.panel(size(across), size(along)),
		picture: words.picture(quantityText(map.strokes.value, 'count', reader)),
		verdict: { sign: map.verdict === 'accepted' ? 'inside' : 'outside', text: words.verdict[map.verdict] },
		landing: { sign: SIGNS[map.landing.degree], text: landingText(map, reader) },
		numbers: numbersOf(map, reader),
		bands,
		classes: FILM_CLASSES.map((kind) => ({
			kind,
			label: words.class[kind],
			share: quantityText(share(kind), 'fraction', reader)
		})),
		strokes: strokesAt(map),
		curve: map.film.map((film) => drawn(film / widest)),
		wanted: [drawn(map.wanted.min.value / widest), drawn(map.wanted.max.value / widest)] as const,
		widest: quantityText(widest, 'length', reader),
		readings: readingsOf(map, reader),
		derivations: [map.mean, map.wet, map.wanted.min, map.wanted.max, map.spot.min, map.spot.max, shape, along]
			.filter((one, at, all) => all.indexOf(one) === at)
			.map((one) => derivationView(one, reader))
	} as const;
}

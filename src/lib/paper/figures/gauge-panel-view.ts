import type { Figure } from '$lib/drills';
import { unitOf } from '$lib/engine';
import { format, gauges, say, type Lang } from '$lib/i18n';
import type { Reader } from '../reader';
import { faceOf, pastNumber, type Divided } from './face';

type GaugePanel = Extract<Figure, { kind: 'gauge-panel' }>;
type Instrument = GaugePanel['instruments'][number];
type One<K extends Instrument['kind']> = Extract<Instrument, { kind: K }>;

/** A gauge starts low on the left and ends low on the right. */
const DIAL_SWEEP = [-135, 135] as const;
const SECONDS: Divided = { from: 0, to: 60, numbered: 5, division: 1, sweep: [0, 360] };
const MINUTES: Divided = { from: 0, to: 15, numbered: 5, division: 1, sweep: [0, 360] };
const MINUTE = 60;

const where = (reading: number, divided: Divided, lang: Lang) => {
	const { number: before, divisions } = pastNumber(reading, divided);
	const [words, number] = [gauges[lang], format.number(before, lang)];
	return divisions === 0 ? words.at(number) : words.past(divisions, number);
};

function dial({ shows, dimension, scale, value }: One<'dial'>, lang: Lang) {
	const unit = unitOf(dimension, scale.unit);
	const number = (one: number) => format.number(one, lang);
	const divided = { ...scale, sweep: DIAL_SWEEP };
	const reading = unit.fromSi(value);
	const { from, to, numbered, division } = scale;
	const marked = {
		unit: say(unit.label, lang),
		from: number(from),
		to: number(to),
		numbered: number(numbered),
		division: number(division)
	};
	return {
		kind: 'dial' as const,
		name: gauges[lang].shows[shows],
		unit: marked.unit,
		face: faceOf(reading, divided, number),
		inWords: `${gauges[lang].scale(marked)} ${where(reading, divided, lang)}`
	};
}

/** A round face ends where it begins: only its last number is printed. */
const round = (one: number) => (one === 0 ? '' : String(one));

function stopwatch({ shows, value }: One<'stopwatch'>, lang: Lang) {
	const words = gauges[lang];
	const seconds = value % MINUTE;
	return {
		kind: 'stopwatch' as const,
		name: words.shows[shows],
		unit: 's',
		face: faceOf(seconds, SECONDS, round),
		minutes: faceOf(value / MINUTE, MINUTES, round),
		inWords: [words.stopwatch, where(seconds, SECONDS, lang), words.small(Math.floor(value / MINUTE))].join(
			' '
		)
	};
}

function digital({ shows, dimension, unit, decimals, value }: One<'digital'>, lang: Lang) {
	const seconds = Math.round(value);
	const shown =
		unit === 'min:s'
			? `${Math.floor(seconds / MINUTE)}:${String(seconds % MINUTE).padStart(2, '0')}`
			: unitOf(dimension, unit).fromSi(value).toFixed(decimals);
	const words = gauges[lang];
	return {
		kind: 'digital' as const,
		name: words.shows[shows],
		unit,
		shown,
		inWords: words.display(shown, unit)
	};
}

function instrumentView(instrument: Instrument, lang: Lang) {
	if (instrument.kind === 'dial') return dial(instrument, lang);
	return instrument.kind === 'stopwatch' ? stopwatch(instrument, lang) : digital(instrument, lang);
}

/** Instruments as they stand, in the reader's language. Their units are their own: that is what is practised. */
export function gaugePanelView({ instruments }: GaugePanel, { lang }: Reader) {
	const air = instruments.some(({ shows }) => shows === 'air');
	return {
		kind: 'gauge-panel' as const,
		note: air ? gauges[lang].airNow : gauges[lang].now,
		instruments: instruments.map((one) => instrumentView(one, lang))
	};
}

import type { Figure } from '$lib/drills';
import { unitOf } from '$lib/engine';
import { format, ovenChart, type Lang } from '$lib/i18n';
import type { Reader } from '../reader';
import { axis, type Axis, type Ruling } from './chart-axis';

type OvenChart = Extract<Figure, { kind: 'oven-chart' }>;

const MINUTE = 60;
/** Numbers of the time axis, minutes, by its smallest division. */
const NUMBERED_MINUTES: Readonly<Record<number, number>> = { 1: 10, 2: 20, 5: 30 };
/** Rulings of the temperature axis, degrees of either scale, and the most divisions that can still be told apart. */
const RULINGS: readonly Ruling[] = [
	{ division: 2, numbered: 10 },
	{ division: 5, numbered: 20 },
	{ division: 10, numbered: 50 }
];
const MOST_DIVISIONS = 50;
const COARSEST: Ruling = { division: 20, numbered: 100 };

const TRACES = ['heaviest', 'thinnest', 'air'] as const;

function temperatureAxis(degrees: readonly number[]): Axis {
	const [lowest, highest] = [Math.min(...degrees), Math.max(...degrees)];
	const ruling = RULINGS.find(({ division }) => (highest - lowest) / division <= MOST_DIVISIONS);
	return axis(lowest, highest, ruling ?? COARSEST);
}

function timeAxis(last: number, division: number): Axis {
	const numbered = NUMBERED_MINUTES[division];
	if (!numbered) throw new RangeError(`oven-chart-view: no numbers for divisions of ${division} min`);
	return axis(0, last, { division, numbered });
}

const labelled = (one: Axis, lang: Lang) => ({
	small: one.small,
	numbered: one.numbered.map(({ at, number }) => ({ at, label: format.number(number, lang) }))
});

/** Samples from one row of the table to the next: as fine as the divisions of the chart. */
const rowEvery = ({ division, every }: OvenChart) => Math.max(1, Math.floor(division / every));

/** The same readings for whoever does not see the lines, in the chart's unit. */
function tableOf(
	figure: OvenChart,
	traces: Record<'heaviest' | 'thinnest' | 'air', readonly number[]>,
	lang: Lang
) {
	const words = ovenChart[lang];
	const { every, doorOpen } = figure;
	const degrees = (value: number) => format.number(value, lang, { atLeast: 1, atMost: 1 });
	const isOpen = (time: number) => doorOpen.some(({ from, to }) => time >= from && time <= to);
	const samples = traces.air.map((_, at) => at).filter((at) => at % rowEvery(figure) === 0);
	return {
		head: [words.head.time, ...TRACES.map((id) => words.traces[id]), words.head.door],
		rows: samples.map((at) => ({
			time: format.number((at * every) / MINUTE, lang),
			readings: TRACES.map((id) => degrees(traces[id][at]!)),
			door: isOpen(at * every) ? words.open : words.shut
		}))
	};
}

/** The chart of an oven load as plain data for a page: lines as shares of the plot, numbers in the recorder's unit. */
export function ovenChartView(figure: OvenChart, { lang }: Reader) {
	const words = ovenChart[lang];
	const { fromSi } = unitOf('temperature', figure.unit);
	const inUnit = {
		heaviest: figure.heaviest.map(fromSi),
		thinnest: figure.thinnest.map(fromSi),
		air: figure.air.map(fromSi)
	};
	const minutes = (seconds: number) => seconds / MINUTE;
	const x = timeAxis(minutes((figure.air.length - 1) * figure.every), minutes(figure.division));
	const y = temperatureAxis(TRACES.flatMap((id) => inUnit[id]));
	const across = (seconds: number) => (minutes(seconds) - x.from) / (x.to - x.from);
	const up = (degrees: number) => (degrees - y.from) / (y.to - y.from);
	return {
		kind: 'oven-chart' as const,
		temperatureTitle: words.temperature(figure.unit),
		divisions: words.divisions(
			format.number(x.division, lang),
			`${format.number(y.division, lang)} ${figure.unit}`
		),
		time: labelled(x, lang),
		temperature: labelled(y, lang),
		traces: TRACES.map((id) => ({
			id,
			label: words.traces[id],
			line: words.lines[id],
			points: inUnit[id].map((degrees, at) => [across(at * figure.every), up(degrees)] as const)
		})),
		doorOpen: figure.doorOpen.map(({ from, to }) => ({ from: across(from), to: across(to) })),
		table: {
			caption: words.tableCaption(figure.unit, format.number(minutes(figure.every * rowEvery(figure)), lang)),
			...tableOf(figure, inUnit, lang)
		}
	};
}

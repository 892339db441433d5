import {
	commonPractice,
	given,
	kelvin,
	seconds,
	workedOut,
	type ChartVerdict,
	type Demand,
	type PlannedField,
	type Text,
	type Traced
} from '$lib/engine';
import { askedReading } from '../asked-reading';
import type { Load } from './load';
import type { Pace } from './pace';
import type { Soak } from './soak';
import type { Story } from './stories';

function demandOf({ demand }: Load, rule: string): Demand {
	const own = demand(rule);
	if (!own) throw new Error(`read-the-oven-chart: the plan has no ${rule}`);
	return own;
}

const LABELS = {
	starts: { en: 'The slower place enters the window', es: 'El lugar más lento entra en la ventana' },
	ends: {
		en: 'A place leaves the window, or the door opens',
		es: 'Un lugar sale de la ventana, o se abre la puerta'
	},
	out: { en: 'Time out of the window in between', es: 'Tiempo fuera de la ventana entre medio' },
	inside: { en: 'Time both places were in the window', es: 'Tiempo con ambos lugares en la ventana' },
	hottest: { en: 'Hottest reading of a place', es: 'Lectura más alta de un lugar' },
	reached: { en: 'Hottest the slower place got', es: 'Lo más caliente que llegó el lugar más lento' },
	off: {
		en: 'How far off a time may be read: a division, or two minutes',
		es: 'Cuánto puede desviarse un tiempo leído: una división, o dos minutos'
	},
	tolerance: { en: 'As a share of the time', es: 'Como parte del tiempo' }
} as const satisfies Record<string, Text>;

const time = (value: number, label: Text) => given('duration', seconds(value), label);

/** A time to be read off the chart, with the demand of the rule it serves. */
function reading(
	load: Load,
	pace: Pace,
	field: PlannedField['field'],
	rule: string,
	value: Traced
): PlannedField {
	const off = given('duration', seconds(pace.tolerance), LABELS.off, commonPractice);
	const demand = demandOf(load, rule);
	return askedReading({ field, demand, value, off, share: LABELS.tolerance, amber: pace.tolerance });
}

/** An accepted load stays as it came out; a good one, or one cured too much, is baked once more where it is taken for soft. */
const LEADS: Readonly<Record<ChartVerdict, Readonly<Partial<Record<ChartVerdict, 'low' | 'high'>>>>> = {
	accept: { 'short-cold': 'high' },
	'short-cold': { accept: 'low', 'long-hot': 'low' },
	'long-hot': { accept: 'high', 'short-cold': 'high' }
};

/** The numbers that settle the verdict. */
function because({ cure, hold, sheetTop }: Load, soak: Soak, { starts, ends }: Times): readonly Traced[] {
	if (soak.hottest > sheetTop.value)
		return [given('temperature', kelvin(soak.hottest), LABELS.hottest), sheetTop];
	if (!starts || !ends) return [given('temperature', kelvin(soak.slowestReached), LABELS.reached), cure.low];
	const out = time(ends.value - starts.value - soak.inside, LABELS.out);
	const inputs = { starts, ends, ...(soak.unbroken ? {} : { out }) };
	return [workedOut('hold-time', 'duration', soak.inside, LABELS.inside, inputs), hold.low, hold.high];
}

type Times = { readonly starts?: Traced; readonly ends?: Traced };

/** What is asked about a chart: the times that it has, and what to do with the load. */
export function asked(load: Load, pace: Pace, soak: Soak, { rule, verdict }: Story): readonly PlannedField[] {
	const { stretch, unbroken, neverOver } = soak;
	const times: Times = stretch
		? { starts: time(stretch.starts, LABELS.starts), ends: time(stretch.ends, LABELS.ends) }
		: {};
	const told = neverOver ? times : {};
	return [
		...(told.starts ? [reading(load, pace, 'soak-starts', 'heat-up-before-soak', told.starts)] : []),
		// of an interrupted soak, which end is meant would be a matter of words
		...(told.ends && unbroken ? [reading(load, pace, 'soak-ends', 'hold-time', told.ends)] : []),
		{
			field: 'chart-verdict',
			demands: [
				{
					...demandOf(load, rule),
					expectation: {
						kind: 'one-of',
						options: [verdict],
						because: because(load, soak, times),
						leads: LEADS[verdict] as Readonly<Record<string, 'low' | 'high'>>
					}
				}
			],
			superseded: [],
			answer: { kind: 'choice', option: verdict }
		}
	];
}

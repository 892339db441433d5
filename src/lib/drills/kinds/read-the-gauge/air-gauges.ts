import {
	given,
	grade,
	plannedField,
	solve,
	unitOf,
	type Demand,
	type Expectation,
	type Job,
	type PlannedField,
	type Shop,
	type Traced
} from '$lib/engine';
import type { DialGauge, Scale } from '../../figures/gauge-panel';
import type { Random } from '../../random';
import type { MakeInstrument } from './instrument';
import { HYGROMETER, THERMOMETERS } from './scales';

const FIELD = 'surface-minimum';
/** How far the air drifts in a day: kelvins, and shares of saturation. */
const AIR_DRIFT = [1, 8] as const;
const HUMIDITY_DRIFT = [0.04, 0.26] as const;
const HUMIDITY = [0.2, 0.9] as const;
const TRIES = 20;

/** Ticks of the scale, SI: these pointers stand on one, as dew point takes two readings and has no room for both being off. */
function ticksOf({ unit, from, to, division }: Scale, dimension: 'temperature' | 'fraction') {
	const count = Math.round((to - from) / division);
	return Array.from({ length: count + 1 }, (_, at) => unitOf(dimension, unit).toSi(from + at * division));
}

const drifted = (now: number, before: number, [least, most]: readonly [number, number]) =>
	Math.abs(now - before) >= least && Math.abs(now - before) <= most;

type Air = Pick<Job['weather'], 'air' | 'humidity'>;

function drawAir({ weather }: Job, scale: Scale, random: Random): Air | undefined {
	const air = ticksOf(scale, 'temperature').filter((one) => drifted(one, weather.air, AIR_DRIFT));
	const humidity = ticksOf(HYGROMETER, 'fraction').filter(
		(one) => drifted(one, weather.humidity, HUMIDITY_DRIFT) && one >= HUMIDITY[0] && one <= HUMIDITY[1]
	);
	if (!air.length || !humidity.length) return undefined;
	return { air: random.pick(air), humidity: random.pick(humidity) } as Air;
}

/** The derivation with the two readings where the ticket's would stand. */
function asRead(traced: Traced): Traced {
	const { origin, inputs, dimension, value, label } = traced;
	if (origin.kind === 'job' && origin.path.startsWith('weather.'))
		return given(dimension, value, {
			en: `${label.en}, as the dial shows it now`,
			es: `${label.es}, como lo marca ahora la carátula`
		});
	const read = Object.entries(inputs).map(([name, input]) => [name, asRead(input)] as const);
	return { ...traced, inputs: Object.fromEntries(read) };
}

const expectationAsRead = (expectation: Expectation): Expectation =>
	expectation.kind === 'range'
		? { ...expectation, min: asRead(expectation.min), max: asRead(expectation.max) }
		: expectation;

const demandAsRead = (demand: Demand): Demand => ({
	...demand,
	expectation: expectationAsRead(demand.expectation)
});

/** The lowest part temperature in this air; undefined where what the ticket's morning air gives would do as well. */
function askedIn(air: Air, job: Job, shop: Shop, morning: PlannedField): PlannedField | undefined {
	const now = plannedField(solve({ ...job, weather: { ...job.weather, ...air } }, shop), FIELD);
	if (!now) return undefined;
	const plan = { engine: '', decision: 'accept', reasons: [], conflicts: [], fields: [now] } as const;
	const { all } = grade(plan, { [FIELD]: morning.answer });
	return all.every(({ zone }) => zone === 'red')
		? { ...now, demands: now.demands.map(demandAsRead) }
		: undefined;
}

/** Thermometer and hygrometer as they stand now, which is not how the ticket found them in the morning. */
export const airGauges: MakeInstrument = ({ job, plan, shop }, random) => {
	const morning = plannedField(plan, FIELD);
	if (!morning) return undefined;
	const scale = random.pick(THERMOMETERS);
	for (let tries = 0; tries < TRIES; tries += 1) {
		const air = drawAir(job, scale, random);
		const field = air && askedIn(air, job, shop, morning);
		if (!field) continue;
		const dial = { kind: 'dial' } as const;
		const instruments: DialGauge[] = [
			{ ...dial, shows: 'air', dimension: 'temperature', scale, value: air.air },
			{ ...dial, shows: 'humidity', dimension: 'fraction', scale: HYGROMETER, value: air.humidity }
		];
		return { instruments, fields: [field] };
	}
	return undefined;
};

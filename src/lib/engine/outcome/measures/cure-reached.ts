import { cureEquivalence } from '../../physics/cure/cure-equivalence';
import { slowestHeatUp } from '../../plan/slowest-heat-up';
import { workedOut, type Traced } from '../../plan/trace';
import type { Broken } from '../broken';
import type { OutcomeMeasure, Side } from '../outcome';
import { allSet, amount, windowBy, type PutIn } from '../put-in';
import { worstOf } from '../standing';
import { TEACHING } from '../teaching';

const RULES = new Set([
	'cure-part-temperature',
	'hold-time',
	'heat-up-before-soak',
	'clock-starts-on-part',
	'below-fume-limit'
]);

/** A clock started too soon gives the part less time than was set. */
const pull = ({ rule, off }: Broken): Side | undefined =>
	RULES.has(rule.id) ? (off === 'high' ? 'high' : 'low') : undefined;

/** Time the slowest part was held: a clock that started at the oven door ran through its heat-up too. */
function heldFor(given: PutIn): Traced<'duration'> | undefined {
	const set = amount(given, 'cure-hold', 'duration');
	const clock = given.answers['clock-starts'];
	const heatUp = slowestHeatUp(given.seen);
	if (!set || clock?.kind !== 'choice' || clock.option !== 'door' || !heatUp) return set;
	const label = { en: 'Time left for the slowest part', es: 'Tiempo que queda a la pieza más lenta' };
	const left = Math.max(0, set.value - heatUp.value);
	return workedOut('clock-starts-on-part', 'duration', left, label, { set, heatUp });
}

type Window<D extends 'temperature' | 'duration'> = { readonly min: Traced<D>; readonly max: Traced<D> };

/**
 * The cure that counts. The sheet's window is a hard limit: what is outside it on one side is never made up for by the
 * other, so the other then counts at most, or at least, as its own limit.
 */
function counted(
	at: Traced<'temperature'>,
	held: Traced<'duration'>,
	temperature: Window<'temperature'>,
	hold: Window<'duration'>
): readonly [Traced<'temperature'>, Traced<'duration'>] {
	if (at.value < temperature.min.value) return [at, held.value > hold.min.value ? hold.min : held];
	if (at.value > temperature.max.value) return [at, held.value < hold.max.value ? hold.max : held];
	if (held.value < hold.min.value) return [temperature.min, held];
	if (held.value > hold.max.value) return [temperature.max, held];
	return [at, held];
}

/** Cure as time at the middle of the sheet's window (Arrhenius), between the coolest and shortest and the hottest and longest. */
export function cureReached(given: PutIn, broken: readonly Broken[]): OutcomeMeasure | undefined {
	if (!allSet(given, ['cure-temperature', 'cure-hold', 'clock-starts'])) return undefined;
	const [set, held] = [amount(given, 'cure-temperature', 'temperature'), heldFor(given)];
	const temperature = windowBy(given, 'cure-part-temperature', 'temperature');
	const hold = windowBy(given, 'hold-time', 'duration');
	if (!set || !held || !temperature || !hold) return undefined;
	const label = { en: 'Middle of the cure window', es: 'Centro de la ventana de curado' };
	const middle = (temperature.min.value + temperature.max.value) / 2;
	const at = workedOut('cure-part-temperature', 'temperature', middle, label, temperature);
	const { activation } = TEACHING;
	const [statedAt, stated] = counted(set, held, temperature, hold);
	const [coldest, hottest] = cureEquivalence.validFor.statedAt;
	const [, longest] = cureEquivalence.validFor.stated;
	const known =
		statedAt.value >= coldest && statedAt.value <= hottest && stated.value >= 0 && stated.value <= longest;
	return {
		id: 'cure-reached',
		kind: 'quantity',
		value: known ? cureEquivalence.of({ stated, statedAt, at, activation }) : null,
		wanted: {
			min: cureEquivalence.of({ stated: hold.min, statedAt: temperature.min, at, activation }),
			max: cureEquivalence.of({ stated: hold.max, statedAt: temperature.max, at, activation })
		},
		...worstOf(broken, pull)
	};
}

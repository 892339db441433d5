import { micrometres, plannedField, unitOf, type Demand, type Plan } from '$lib/engine';
import type { MakeInstrument } from './instrument';
import { workedLimit, type Limits } from '../limits-of';
import { inSi, mistakenUnit, type Readable } from './readable';
import { reads, stands } from './reading';
import { draw, suits } from './stands';

/** Thin films are shown to the tenth of a micrometre, thicker ones to the whole. */
const FINE_BELOW = micrometres(50);
/** How far past the window it is drawn. */
const TIMES = 3;

function spots(plan: Plan): Limits {
	const of = (id: 'spot-minimum' | 'spot-maximum'): readonly Demand[] =>
		plannedField(plan, id)?.demands ?? [];
	const [low, high] = [workedLimit(of('spot-minimum')), workedLimit(of('spot-maximum'))];
	return { ...(low && { low }), ...(high && { high }) };
}

/** Nothing is read with a gauge where the film has to be weighed. */
function readable(plan: Plan): boolean {
	const gauge = plannedField(plan, 'gauge')?.answer;
	return gauge?.kind === 'choice' && gauge.option !== 'foil-mass';
}

export const filmGauge: MakeInstrument = ({ plan }, random) => {
	const limits = spots(plan);
	if (!readable(plan) || !limits.low || !limits.high) return undefined;
	const thickest = limits.high.at.value;
	const unit = random.pick(['mil', 'µm'] as const);
	const decimals = unit === 'mil' ? 2 : thickest < FINE_BELOW ? 1 : 0;
	const step = 10 ** -decimals;
	const display: Readable<'length'> = {
		dimension: 'length',
		unit,
		from: step,
		to: Math.round((unitOf('length', unit).fromSi(thickest) * TIMES) / step) * step,
		step,
		tolerance: step,
		mistaken: mistakenUnit('length', unit)
	};
	if (!suits(display, limits)) return undefined;
	const drawn = draw(display, limits, random);
	const value = inSi(display, drawn.shown);
	return {
		instruments: [{ kind: 'digital', shows: 'spot', dimension: 'length', unit, decimals, value }],
		fields: [
			reads('film-gauge-reads', display, limits, drawn),
			stands('film-gauge-stands', display, limits, drawn, false)
		]
	};
};

import { sheetValue } from '../../plan/situation';
import type { Traced } from '../../plan/trace';
import { commonPractice } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import type { Broken } from '../broken';
import type { OutcomeMeasure, Side, Standing } from '../outcome';
import { allSet, amount, windowBy, type PutIn } from '../put-in';
import { standingOf, worstOf } from '../standing';
import { TEACHING } from '../teaching';
import { NO_SURPLUS, surplusThinner } from './surplus-thinner';

type Leaves = {
	readonly solids: Traced<'fraction'>;
	/** Solvent in the unthinned film after the shortest flash-off, share of the wet volume; where the sheet says so. */
	readonly stated: Traced<'fraction'> | undefined;
	readonly shortest: Traced<'duration'>;
};

/** Of the solvent, the part that the shortest flash-off leaves. */
const leftAfterShortest = ({ solids, stated }: Leaves) =>
	stated ? Math.min(1, stated.value / (1 - solids.value)) : TEACHING.flashLeaves.value;

/**
 * Solvent in the film at the oven door, share of the wet volume. It falls by the same part in equal times, so that after
 * the sheet's shortest flash-off there is what the sheet says: s = (1 − VS + x)/(1 + x) · q^(t/t₀).
 */
function solventAfter(
	leaves: Leaves,
	flash: Traced<'duration'>,
	thinner: Traced<'fraction'>
): Traced<'fraction'> {
	const { solids, shortest, stated = TEACHING.flashLeaves } = leaves;
	const before = (1 - solids.value + thinner.value) / (1 + thinner.value);
	const times = Math.max(0, flash.value) / shortest.value;
	return {
		value: fraction(before * leftAfterShortest(leaves) ** times),
		dimension: 'fraction',
		label: {
			en: 'Teaching model: solvent left at the oven door, part of the wet film',
			es: 'Modelo didáctico: solvente que queda al entrar al horno, parte de la película húmeda'
		},
		origin: { kind: 'teaching-model' },
		provenance: commonPractice,
		inputs: { solids, flash, shortest, thinner, stated }
	};
}

const pull = ({ rule, off }: Broken): Side | undefined =>
	rule.id === 'flash-time' && off === 'low' ? 'high' : undefined;

const worse = (one: Standing, other: Standing) => (one.degree >= other.degree ? one : other);

/** Left out for a coating without solvent and for a sheet that asks for no flash-off. */
export function solventLeft(given: PutIn, broken: readonly Broken[]): OutcomeMeasure | undefined {
	if (!allSet(given, ['flash-time', 'thinner-share'])) return undefined;
	const flash = amount(given, 'flash-time', 'duration');
	const shortest = windowBy(given, 'flash-time', 'duration')?.min;
	const solids = sheetValue(given.seen, 'volume-solids');
	if (!flash || !shortest || shortest.value <= 0 || !solids || solids.value >= 1) return undefined;
	const leaves = { solids, shortest, stated: sheetValue(given.seen, 'solvent-share') };
	const thinner = surplusThinner(given);
	const max = solventAfter(leaves, shortest, NO_SURPLUS);
	// how short is too short the rule says; on top of it only what the thinner brings is weighed here
	const flashed = solventAfter(leaves, flash.value < shortest.value ? shortest : flash, thinner);
	const byThinner = standingOf(flashed.value, -Infinity, max.value, 'fraction');
	return {
		id: 'solvent-left',
		kind: 'quantity',
		value: solventAfter(leaves, flash, thinner),
		wanted: { min: null, max },
		...worse(worstOf(broken, pull), byThinner)
	};
}

import type { FieldId } from '../setup/fields';
import type { Broken } from './broken';
import type { Degree } from './degree';
import type { Standing } from './outcome';
import { AS_WANTED, type Pull } from './standing';

/** A third of the way to the end of the scale per degree, as severe means all the way. */
const STEPS = 3;

/**
 * Where broken rules that pull both ways leave a measure: −1 all the way low, 0 as wanted, 1 all the way high. Rules of
 * one field are one pull, the worst of them; pulls of different fields add up and can cancel.
 */
export function signedIndex(broken: readonly Broken[], pull: Pull): Standing & { readonly index: number } {
	const byField = new Map<FieldId, number>();
	for (const one of broken) {
		const side = pull(one);
		if (!side) continue;
		const signed = side === 'high' ? one.degree : -one.degree;
		const before = byField.get(one.field) ?? 0;
		if (Math.abs(signed) > Math.abs(before)) byField.set(one.field, signed);
	}
	const sum = [...byField.values()].reduce((all, one) => all + one, 0);
	const steps = Math.max(-STEPS, Math.min(STEPS, sum));
	const standing: Standing =
		steps === 0 ? AS_WANTED : { degree: Math.abs(steps) as Degree, side: steps > 0 ? 'high' : 'low' };
	return { ...standing, index: steps / STEPS };
}

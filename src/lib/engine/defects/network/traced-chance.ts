import type { Traced } from '../../plan/trace';
import { arithmetic } from '../../sources/provenance';
import { fraction } from '../../units/construct';
import type { Cause } from '../diagnose';
import { networkOf, untestedFit } from './network-of';
import { posterior } from './posterior';
import { DIAGNOSIS_TEACHING } from './teaching';

/** Chance that the rule of this cause was broken, from the defect and the record, with the rates it was worked out from. */
export function tracedChance(causes: readonly Cause[], cause: Cause): Traced<'fraction'> {
	const { brokenWhere, strength, leak } = DIAGNOSIS_TEACHING;
	return {
		value: fraction(posterior(networkOf(causes), { defect: true })[cause.rule]!),
		dimension: 'fraction',
		label: {
			en: `Teaching model: chance that this was broken: ${cause.title.en}`,
			es: `Modelo didáctico: probabilidad de que esto se haya roto: ${cause.title.es}`
		},
		origin: { kind: 'teaching-model' },
		provenance: arithmetic('Bayes’ rule over every cause of the defect'),
		inputs: { brokenWhere: brokenWhere[untestedFit(cause)], strength, leak }
	};
}

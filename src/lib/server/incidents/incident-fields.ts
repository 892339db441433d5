import { diagnose, field, FIELD_IDS, ruleById, type DefectId, type FieldId } from '$lib/engine';

/**
 * Lines of the set-up sheet that help to tell a defect's causes apart. Quantities only: a list without a tick would
 * not say whether nothing was done or nothing was written down.
 */
export function fieldsFor(defect: DefectId): FieldId[] {
	const spoken = new Set(diagnose(defect).map(({ rule }) => ruleById(rule).field));
	return FIELD_IDS.filter((id) => spoken.has(id) && field(id).kind === 'quantity');
}

import type { FieldId } from '../setup/fields';
import type { Plan, PlannedField } from './plan';

/** A field as a plan has it; undefined where the job does not ask for it. */
export const plannedField = ({ fields }: Pick<Plan, 'fields'>, id: FieldId): PlannedField | undefined =>
	fields.find(({ field }) => field === id);

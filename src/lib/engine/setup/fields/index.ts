import type { Field } from '../field';
import { curingFields } from './curing';
import { inspectionFields } from './inspection';
import { intakeFields } from './intake';
import { mixingFields } from './mixing';
import { preparationFields } from './preparation';
import { safetyFields } from './safety';
import { sprayingFields } from './spraying';

/** The whole set-up sheet, in working order within each station. */
export const FIELDS = {
	...intakeFields,
	...preparationFields,
	...mixingFields,
	...sprayingFields,
	...curingFields,
	...inspectionFields,
	...safetyFields
} as const satisfies Record<string, Field>;

export type FieldId = keyof typeof FIELDS;

export const FIELD_IDS = Object.keys(FIELDS) as FieldId[];

export const field = (id: FieldId): Field => FIELDS[id];

export const isFieldId = (id: string): id is FieldId => Object.hasOwn(FIELDS, id);

import type { Field } from '../field';
import { causeFindingFields } from './cause-finding';
import { chartReadingFields } from './chart-reading';
import { curingFields } from './curing';
import { gaugeReadingFields } from './gauge-reading';
import { inspectionFields } from './inspection';
import { intakeFields } from './intake';
import { mixingFields } from './mixing';
import { preparationFields } from './preparation';
import { safetyFields } from './safety';
import { sprayingFields } from './spraying';

/** Asked in practice only: what is read, marked or traced at the bench and not written on a set-up sheet. */
export const BENCH_FIELDS = {
	...gaugeReadingFields,
	...chartReadingFields,
	...causeFindingFields
} as const satisfies Record<string, Field>;

/** The whole set-up sheet, in working order within each station, and what practice asks beside it. */
export const FIELDS = {
	...intakeFields,
	...preparationFields,
	...mixingFields,
	...sprayingFields,
	...curingFields,
	...inspectionFields,
	...safetyFields,
	...BENCH_FIELDS
} as const satisfies Record<string, Field>;

export type FieldId = keyof typeof FIELDS;

export const FIELD_IDS = Object.keys(FIELDS) as FieldId[];

export const field = (id: FieldId): Field => FIELDS[id];

export const isFieldId = (id: string): id is FieldId => Object.hasOwn(FIELDS, id);

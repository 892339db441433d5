import * as v from 'valibot';
import {
	isFieldId,
	jobSchema,
	SUBSTRATES,
	type Answers,
	type Dimension,
	type SubstrateId
} from '$lib/engine';
import type { Json } from '$lib/records';

/** What an instrument may have read while the job ran. */
export const READINGS = {
	air: 'temperature',
	humidity: 'fraction',
	part: 'temperature',
	paint: 'temperature'
} as const satisfies Record<string, Dimension>;
export type ReadingId = keyof typeof READINGS;
export const READING_IDS = Object.keys(READINGS) as ReadingId[];

const { entries: weather } = jobSchema.entries.weather;
const known = v.nullish(v.number(), null);
const quantity = v.strictObject({
	kind: v.literal('quantity'),
	value: v.number(),
	typed: v.string(),
	rounding: v.optional(v.number())
});

/** Read leniently in what is there, strictly in what it is: null is what nobody wrote down. */
const conditionsSchema = v.object({
	/** Day of the job: the sheets and shop values of that day are read. */
	on: v.nullish(v.pipe(v.string(), v.isoDate()), null),
	coating: v.nullish(v.string(), null),
	material: v.nullish(v.picklist(Object.keys(SUBSTRATES) as SubstrateId[]), null),
	air: known,
	humidity: known,
	part: known,
	paint: known,
	/** Lines of the job's set-up sheet, SI. */
	written: v.optional(v.record(v.pipe(v.string(), v.check(isFieldId)), quantity), {})
});

/** What was known of the job when an incident was reported. */
export type Conditions = Omit<v.InferOutput<typeof conditionsSchema>, 'written'> & {
	readonly written: Answers;
};

/** @throws if the record holds something else: it was then not entered through this program's form */
export const readConditions = (entered: Json): Conditions => {
	const { written, ...rest } = v.parse(conditionsSchema, entered);
	return { ...rest, written: written as Answers };
};

/** Whether the engine can work with a reading; what it cannot work with cannot exist in a shop. */
export const canBe = (reading: ReadingId, value: number): boolean => v.is(weather[reading], value);

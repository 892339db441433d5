import * as v from 'valibot';
import type { Text } from '../text';
import { benchSchema, shelfSchema, wearerSchema } from './bench';
import { partSchema } from './part';
import { dateSchema, durationSchema, fractionSchema, keyOf, lengthSchema, temperatureSchema } from './schema';

/** How the customer states the film on the drawing. */
export const FILM_BASES = {
	'per-side': { en: 'per side', es: 'por cara' },
	unstated: { en: 'not said whether per side or in total', es: 'no dice si es por cara o en total' }
} as const satisfies Record<string, Text>;

/**
 * A job as it lies on the receiving bench: the ticket, the parts, the weather, the shelf and the equipment of the day.
 * All numbers SI. A job states facts only; what is right for it is the engine's to say.
 */
export const jobSchema = v.object({
	ticket: v.string(),
	/** Invented customer. */
	customer: v.string(),
	on: dateSchema,
	parts: v.pipe(v.array(partSchema), v.minLength(1), v.maxLength(3)),
	/** Id of the coating's data sheet. */
	coating: v.string(),
	/** Dry film the customer asks for; null leaves it to the data sheet. */
	film: v.nullable(
		v.object({ min: lengthSchema(1e-6, 500e-6), max: lengthSchema(1e-6, 500e-6), basis: keyOf(FILM_BASES) })
	),
	/** Highest part temperature the customer gives in writing; null where none. */
	writtenCap: v.nullable(temperatureSchema(300, 800)),
	/** The customer agrees in writing to blasting an anodised face. */
	blastingAgreed: v.boolean(),
	weather: v.object({
		air: temperatureSchema(253.15, 323.15),
		humidity: fractionSchema(0.05, 1),
		/** Coldest spot of the parts on the rack. */
		part: temperatureSchema(253.15, 373.15),
		paint: temperatureSchema(253.15, 323.15)
	}),
	/** Time since the parts were blasted by the shift before; null where blasting is still to do. */
	blastedAgo: v.nullable(durationSchema(0, 2_592_000)),
	/** Bake-outs done so far of which the last still showed residue. */
	residueLoops: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(6)),
	shelf: shelfSchema,
	bench: benchSchema,
	wearer: wearerSchema,
	/** Witness-panel film readings of the last batch, by spot (three readings each); empty where none. */
	readings: v.array(v.array(lengthSchema(0, 1e-3)))
});

export type Job = v.InferOutput<typeof jobSchema>;

import * as v from 'valibot';
import { count, day, hash, id, textRef } from '../shapes';
import { json } from '../json';

const timeZone = v.pipe(v.string(), v.regex(/^[A-Za-z0-9_+-]+(\/[A-Za-z0-9_+-]+){0,2}$/, 'not a time zone'));

export const shopEvents = {
	/** The first entry of every journal. Days in the journal are days in `timeZone`. */
	'shop.founded': v.strictObject({ lead: id, name: textRef, timeZone, demo: v.boolean() }),
	/** One revision of a data sheet, whole, in use from the day `effective` until a later revision. */
	'sheet.saved': v.strictObject({
		sheet: id,
		revision: v.pipe(count, v.minValue(1)),
		effective: day,
		content: json,
		contentHash: hash
	}),
	'shop-value.set': v.strictObject({ value: id, amount: json, from: day, reason: v.nullable(textRef) }),
	/** The rules of certification this shop works by. */
	'scheme.set': v.strictObject({
		scheme: id,
		version: v.pipe(count, v.minValue(1)),
		effective: day,
		content: json,
		contentHash: hash
	})
};

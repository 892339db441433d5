import * as v from 'valibot';
import { count, day, hash, id, ids, instant, sheetRef, textRef } from '../shapes';
import { conflict } from './conflict';

const gate = v.strictObject({
	gate: id,
	seen: v.picklist(['met', 'not-met', 'not-seen']),
	critical: v.boolean()
});

/** Raw readings in SI units as taken, with the limits they were held against (null: open on that side). */
const reading = v.strictObject({
	reading: id,
	unit: v.pipe(v.string(), v.maxLength(12)),
	values: v.array(v.pipe(v.number(), v.finite())),
	least: v.nullable(v.pipe(v.number(), v.finite())),
	most: v.nullable(v.pipe(v.number(), v.finite())),
	accepted: v.boolean()
});

/** What was measured with, and the last day its calibration holds (null: not calibrated by date). */
const instrument = v.strictObject({ instrument: id, calibrationDue: v.nullable(day) });

const override = v.strictObject({ what: v.pipe(ids, v.minLength(1)), reason: textRef });

export const signOffEvents = {
	/** Hands-on work watched by `witness`. `late`: entered more than a day after it was taken. */
	'practical.recorded': v.strictObject({
		practical: id,
		person: id,
		competency: id,
		witness: id,
		takenAt: instant,
		late: v.boolean(),
		/** The coating on the panels: the readings were held against the limits of this revision. */
		sheet: sheetRef,
		panels: ids,
		instruments: v.array(instrument),
		gates: v.array(gate),
		readings: v.array(reading),
		result: v.picklist(['accepted', 'refused']),
		/** Readings outside their limits that were accepted all the same, and why. */
		override: v.nullable(override),
		note: v.nullable(textRef)
	}),
	'signoff.granted': v.strictObject({
		signOff: id,
		person: id,
		competency: id,
		signer: id,
		meaning: v.literal('approved'),
		evidence: v.strictObject({ lessons: ids, run: id, practical: id, safetyDrills: count }),
		conflict,
		watchedBy: ids,
		nonIndependent: v.boolean(),
		foundingLead: v.boolean(),
		override: v.nullable(override),
		/** Whether all parts were taken anew, lessons too: the date of full re-evaluation counts from here. */
		full: v.boolean(),
		validFrom: day,
		validUntil: day,
		continuityDue: day,
		reevaluationDue: day,
		scheme: v.strictObject({ scheme: id, version: count, hash })
	}),
	/** A second signature beside a first one that was not independent. Changes nothing in the first. */
	'signoff.second-person': v.strictObject({ signOff: id, person: id, second: id, conflict }),
	'signoff.suspended': v.strictObject({ signOff: id, person: id, reason: textRef, reviewBy: day }),
	'signoff.reinstated': v.strictObject({ signOff: id, person: id, reason: textRef }),
	'signoff.withdrawn': v.strictObject({ signOff: id, person: id, reason: textRef }),
	/** Work in scope was done since the last confirmation: job numbers with their days. */
	// a gap beyond the scheme's grace also needs a practical taken since, the short requalification
	'continuity.confirmed': v.strictObject({
		signOff: id,
		person: id,
		jobs: v.pipe(v.array(v.strictObject({ job: id, on: day })), v.minLength(1)),
		how: v.picklist(['confirm-continuity', 'confirm-late', 'requalify']),
		practical: v.nullable(id),
		continuityDue: day
	})
};

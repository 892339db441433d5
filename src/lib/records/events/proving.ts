import * as v from 'valibot';
import { count, hash, id, ids, sheetRef } from '../shapes';
import { json } from '../json';

export const PURPOSES = ['first', 'retest', 'renewal', 'refresher'] as const;

const schemeRef = v.strictObject({ scheme: id, version: count, hash });

export const provingEvents = {
	/** `plan` holds the parameters of the sequential test as they were; `rules` narrows a refresher. */
	'proving.opened': v.strictObject({
		run: id,
		person: id,
		competency: id,
		purpose: v.picklist(PURPOSES),
		incident: v.nullable(id),
		rules: ids,
		plan: json,
		scheme: schemeRef
	}),
	/**
	 * One ticket as the person saw it, with what was expected, so that the answers can be judged again
	 * from the entry alone. Issuing the same ticket anew is promised only for the same engine version,
	 * sheets, shop values and scheme.
	 */
	'proving.issued': v.strictObject({
		run: id,
		drill: id,
		person: id,
		kind: id,
		seed: id,
		level: count,
		engineVersion: id,
		sheets: v.array(sheetRef),
		shopValuesHash: hash,
		schemeHash: hash,
		ticket: json,
		asked: v.pipe(ids, v.minLength(1)),
		/** Rules the asked fields are judged by. */
		rules: ids,
		expected: json
	}),
	'proving.handed-in': v.strictObject({
		run: id,
		drill: id,
		person: id,
		answers: json,
		right: v.boolean(),
		safetyMisses: ids,
		findings: ids
	}),
	'proving.given-up': v.strictObject({
		run: id,
		drill: id,
		person: id,
		why: v.picklist(['given-up', 'lapsed'])
	}),
	'proving.concluded': v.strictObject({
		run: id,
		person: id,
		verdict: v.picklist(['passed', 'failed']),
		drills: count,
		right: count
	}),
	'safety.concluded': v.strictObject({
		person: id,
		verdict: v.picklist(['passed', 'stopped']),
		drills: count,
		misses: count
	}),
	/** The safety lessons were all done again after a stop; the gate starts from nothing. */
	'safety.restarted': v.strictObject({ person: id, lessons: ids })
};

import * as v from 'valibot';
import { count, hash, id, ids, lang } from '../shapes';
import { json } from '../json';

const tries = v.pipe(count, v.minValue(1));

export const PRACTICE_SUPPORTS = ['half', 'full'] as const;

export const TRAINING_STARTS = ['start-training', 'recertify', 'start-over', 'new-application'] as const;

export const learningEvents = {
	/**
	 * Somebody was admitted to training. Evidence counts from here on; after an expiry of short standing
	 * (`recertify`) earlier lessons still count. An area may be `safety`, whose gate then opens anew.
	 */
	'training.started': v.strictObject({
		person: id,
		areas: v.pipe(ids, v.minLength(1)),
		how: v.picklist(TRAINING_STARTS)
	}),
	/** Every check in the lesson was answered right; `tries` says how often each one took. */
	'lesson.done': v.strictObject({
		person: id,
		lesson: id,
		lessonVersion: id,
		lang,
		tries: v.record(id, tries)
	}),
	/** Recorded so that nobody meets a practised ticket again when proving. Never evidence. */
	'practice.handed-in': v.strictObject({
		person: id,
		attempt: id,
		kind: id,
		seed: id,
		level: count,
		engineVersion: id,
		shopValuesHash: hash,
		rules: ids,
		answers: json,
		hints: count,
		right: v.boolean(),
		findings: ids
	}),
	/**
	 * What the practice drill of that attempt was about and what the first check of each of its pages found, before
	 * anything was put right: what the next drill is chosen by. `support` full: everything was left to the person.
	 */
	'practice.first-check': v.strictObject({
		person: id,
		attempt: id,
		part: id,
		support: v.picklist(PRACTICE_SUPPORTS),
		findings: ids
	})
};

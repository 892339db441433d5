import * as v from 'valibot';
import { count, id, ids, textRef } from '../shapes';
import { json } from '../json';
import { conflict } from './conflict';

export const incidentEvents = {
	/** A defect that got out: on which job, under which conditions, by whose hands. */
	'incident.reported': v.strictObject({
		incident: id,
		defect: id,
		job: id,
		person: id,
		conditions: json,
		note: v.nullable(textRef)
	}),
	/** A test that tells causes apart was made; `rules` are those it leaves as likely. */
	'incident.cause-recorded': v.strictObject({
		incident: id,
		person: id,
		test: id,
		found: v.picklist(['yes', 'no', 'unclear']),
		rules: ids,
		note: v.nullable(textRef)
	}),
	/** A system cause has an action and no refresher; a skill gap has the competency and rules to prove again. */
	'incident.decided': v.variant('cause', [
		v.strictObject({
			incident: id,
			person: id,
			cause: v.literal('system'),
			evidence: textRef,
			action: textRef
		}),
		v.strictObject({
			incident: id,
			person: id,
			cause: v.literal('skill-gap'),
			evidence: textRef,
			competency: id,
			rules: v.pipe(ids, v.minLength(1))
		})
	]),
	/** The refresher's proving run passed and a named person signed for it. Validity dates do not move. */
	'refresher.signed': v.strictObject({
		incident: id,
		person: id,
		competency: id,
		run: id,
		signer: id,
		meaning: v.literal('approved'),
		conflict,
		watchedBy: ids,
		nonIndependent: v.boolean(),
		foundingLead: v.boolean()
	}),
	/** Jobs of the same sort looked at since, and on how many of them the defect came back (none, to close). */
	'incident.closed': v.strictObject({
		incident: id,
		person: id,
		jobsChecked: v.pipe(count, v.minValue(1)),
		repeats: v.literal(0),
		note: v.nullable(textRef)
	})
};

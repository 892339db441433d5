import * as v from 'valibot';
import { count, id, instant } from '../shapes';

export const journalEvents = {
	/** Something was asked for at signing or recording and refused. */
	'act.refused': v.strictObject({ what: id, code: id, person: v.nullable(id) }),
	/** A torn tail that was never acknowledged was cut off when the journal was opened. */
	'journal.repaired': v.strictObject({ bytes: v.pipe(count, v.minValue(1)) }),
	/** The computer's clock now reads earlier than the last entry. */
	'clock.set-back': v.strictObject({ from: instant, to: instant })
};

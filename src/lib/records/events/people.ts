import * as v from 'valibot';
import { id, ids, instant, lang, role, textRef } from '../shapes';

const roles = v.pipe(v.array(role), v.minLength(1));

export const peopleEvents = {
	'person.added': v.strictObject({ person: id, name: textRef, roles, lang }),
	'person.roles-set': v.strictObject({ person: id, roles }),
	/** That a PIN or passphrase was set, and by whom (the actor). Never the secret or anything made from it. */
	'person.secret-set': v.strictObject({ person: id }),
	/** The named texts were erased; the entries that pointed at them stay. */
	'person.erased': v.strictObject({ person: id, texts: ids }),
	/** Read-only access for an auditor, from now until a fixed moment. */
	'auditor.opened': v.strictObject({ person: id, until: instant })
};

import type { RequestEvent } from '@sveltejs/kit';
import { checkSecret } from '../check-secret';
import { requirePerson } from '../guard';
import type { NotTaken } from '../tried';
import { typed } from '../typed';

/**
 * Checks the secret that whoever signs has entered again, as at sign-in: throttled, and a wrong one is put on record.
 * @param what the act that is being signed for
 * @returns null when it is theirs
 */
export async function ownSecret(
	event: RequestEvent,
	form: FormData,
	what: string
): Promise<NotTaken | { readonly reason: 'empty' } | null> {
	const secret = typed(form, 'secret');
	if (!secret) return { reason: 'empty' };
	return checkSecret(
		event.locals.app,
		{ person: requirePerson(event).id, secret, address: event.getClientAddress() },
		what
	);
}

import { accept } from '$lib/records';
import type { App } from './app';
import { tried, type NotTaken } from './tried';

/**
 * Checks a person's PIN or passphrase, at sign-in and again at each signature. A wrong one is entered in the
 * journal; one that had to wait is not, or anybody could fill the disk.
 * @param what 'sign-in', or the act that is being signed for
 * @returns null when it is theirs
 */
export const checkSecret = async (
	app: App,
	{ person, secret, address }: { person: string; secret: string; address: string },
	what: string
): Promise<NotTaken | null> => {
	// made-up ids share one counter, or they would fill the memory
	const known = app.secrets.has(person) ? person : null;
	const notTaken = await tried(app, { whose: known ?? '', address }, () =>
		app.secrets.verify(person, secret)
	);
	if (notTaken?.reason === 'wrong')
		await app.journal.act(
			() => accept({ event: 'act.refused', data: { what, code: 'wrong-secret', person: known } }),
			'program'
		);
	return notTaken;
};

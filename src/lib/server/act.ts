import type { RequestEvent } from '@sveltejs/kit';
import type { Acting, Decision, LogRefusal, Outcome, State } from '$lib/records';
import { requirePerson } from './guard';

/** A command of the record: what a wish leads to, given what is so far. */
export type Command<Wish> = (state: State, wish: Wish, acting: Acting) => Decision;

/**
 * Does something in the name of whoever is signed in. Answers when it is on disk, or why it was refused.
 * @param log enters a refusal in the journal too
 * @throws HttpError 401 when nobody is signed in
 */
export const act = <Wish>(
	event: RequestEvent,
	command: Command<Wish>,
	wish: Wish,
	log?: LogRefusal
): Promise<Outcome> =>
	event.locals.app.journal.act((state, acting) => command(state, wish, acting), requirePerson(event).id, log);

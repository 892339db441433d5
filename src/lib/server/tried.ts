import type { App } from './app';

/** Why a secret or code was not taken. */
export type NotTaken =
	| { readonly reason: 'wrong' }
	/** Not even looked at: the next try is, in so many seconds. */
	| { readonly reason: 'wait'; readonly seconds: number };

const SECOND = 1000;

/**
 * Looks at a secret or code, unless too many wrong ones came before it.
 * @param whose what is being guessed at
 * @param address where the guess comes from
 * @returns null when it is right
 */
export const tried = async (
	{ wrongTries: { person, address }, now }: Pick<App, 'wrongTries' | 'now'>,
	guess: { whose: string; address: string },
	isRight: () => boolean | Promise<boolean>
): Promise<NotTaken | null> => {
	const at = now().getTime();
	const wait = Math.max(person.waitFor(guess.whose, at), address.waitFor(guess.address, at));
	if (wait > 0) return { reason: 'wait', seconds: Math.ceil(wait / SECOND) };

	person.countWrong(guess.whose, at);
	address.countWrong(guess.address, at);
	if (!(await isRight())) return { reason: 'wrong' };
	person.clear(guess.whose);
	address.takeBack(guess.address);
	return null;
};

/** How patient to be with wrong tries. */
export interface Patience {
	/** Wrong tries before there is any wait. */
	free: number;
	/** Wait after the first try beyond that, in ms; doubles with each further one. */
	firstWait: number;
	/** The longest wait, in ms. */
	longestWait: number;
	/** Wrong tries are forgotten this long after the last one, in ms. */
	memory: number;
}

const SECOND = 1000;
const MINUTE = 60 * SECOND;
const HOUR = 60 * MINUTE;

/** One person's secret: at four digits and the longest wait, trying them all takes months. */
export const PERSON_PATIENCE: Patience = {
	free: 3,
	firstWait: 5 * SECOND,
	longestWait: 15 * MINUTE,
	memory: 24 * HOUR
};

/** One address: the whole crew shares the break-room PC, so it gets more room than one person. */
export const ADDRESS_PATIENCE: Patience = {
	free: 12,
	firstWait: 5 * SECOND,
	longestWait: 5 * MINUTE,
	memory: HOUR
};

/** Counts wrong tries by key and says how long the next one has to wait. */
export interface Throttle {
	/** Milliseconds until the next try is looked at; 0 = now. */
	waitFor(key: string, now: number): number;
	/** Counts a try as wrong. Called before the secret is checked, so that tries sent at once are counted too. */
	countWrong(key: string, now: number): void;
	/** Takes back the last counted try, which turned out right. */
	takeBack(key: string): void;
	/** Forgets all tries of the key. */
	clear(key: string): void;
}

/** In memory only: starting the program again forgets the tries, and only someone at the PC itself can do that. */
export const createThrottle = (patience: Patience): Throttle => {
	const tries = new Map<string, { wrong: number; last: number }>();

	const drop = (now: number) => {
		for (const [key, { last }] of tries) if (now - last >= patience.memory) tries.delete(key);
	};

	return {
		waitFor(key, now) {
			drop(now);
			const seen = tries.get(key);
			if (!seen || seen.wrong < patience.free) return 0;
			const wait = Math.min(patience.firstWait * 2 ** (seen.wrong - patience.free), patience.longestWait);
			return Math.max(0, seen.last + wait - now);
		},
		countWrong(key, now) {
			tries.set(key, { wrong: (tries.get(key)?.wrong ?? 0) + 1, last: now });
		},
		takeBack(key) {
			const seen = tries.get(key);
			if (!seen) return;
			if (seen.wrong > 1) tries.set(key, { ...seen, wrong: seen.wrong - 1 });
			else tries.delete(key);
		},
		clear: (key) => void tries.delete(key)
	};
};

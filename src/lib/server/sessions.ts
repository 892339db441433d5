import { randomBytes } from 'node:crypto';

/** Who is signed in, in memory: starting the program again signs everyone out. */
export interface Sessions {
	/** Begins a sign-in under a new id and ends the one the browser had before, if any. */
	begin(person: string, now: number, before?: string): string;
	/** Who holds this sign-in, or null when it ended or lay idle too long; being asked counts as being used. */
	find(id: string, now: number): string | null;
	/** Ends one sign-in. */
	end(id: string): void;
	/** Ends every sign-in of a person, on every PC: after a change of secret or of roles. */
	endAllOf(person: string): void;
}

/** @param idle milliseconds without a request after which a sign-in ends */
export const createSessions = (idle: number): Sessions => {
	const open = new Map<string, { person: string; lastSeen: number }>();

	const drop = (now: number) => {
		for (const [id, { lastSeen }] of open) if (now - lastSeen >= idle) open.delete(id);
	};

	return {
		begin(person, now, before) {
			drop(now);
			if (before) open.delete(before);
			const id = randomBytes(32).toString('base64url');
			open.set(id, { person, lastSeen: now });
			return id;
		},
		find(id, now) {
			drop(now);
			const session = open.get(id);
			if (!session) return null;
			session.lastSeen = now;
			return session.person;
		},
		end: (id) => void open.delete(id),
		endAllOf(person) {
			for (const [id, session] of open) if (session.person === person) open.delete(id);
		}
	};
};

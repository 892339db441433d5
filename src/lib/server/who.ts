import { rolesAt, type Role, type State } from '$lib/records';

/** Somebody signed in. */
export interface Who {
	readonly id: string;
	/** What they are now: an auditor's access ends by itself. */
	readonly roles: readonly Role[];
}

/** The person behind an id if they have any part in the shop now, else null. */
export const whoIs = (state: State, id: string, now: Date): Who | null => {
	const roles = rolesAt(state, id, now.toISOString());
	return roles.length ? { id, roles } : null;
};

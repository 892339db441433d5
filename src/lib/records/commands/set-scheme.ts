import { readScheme } from '$lib/learning';
import { contentHash } from '../content-hash';
import { accept, refuse, type Acting, type Decision } from '../decision';
import type { Json } from '../json';
import { dayOf } from '../standing/calendar-day';
import type { State } from '../state';
import { ifBackdated, unlessRole } from './guards';

export interface SetScheme {
	/** The numbers of the scheme, all of them. */
	readonly limits: Json;
	readonly effective: string;
}

const SCHEME = 'scheme';

/** A version of the scheme as an event, or the first field that is wrong with it. */
export function schemeEvent(limits: Json, version: number, effective: string): Decision {
	const read = readScheme(limits);
	if (!read.ok)
		return refuse('malformed', read.problems[0]?.at, [read.problems[0]?.problem ?? 'not-this-form']);
	return accept({
		event: 'scheme.set',
		data: { scheme: SCHEME, version, effective, content: limits, contentHash: contentHash(limits) }
	});
}

/** A lead sets the numbers by which people are proven and signed. Decisions taken before stay as they were. */
export function setScheme(state: State, wish: SetScheme, acting: Acting): Decision {
	const refused =
		unlessRole(state, acting, 'lead') ?? ifBackdated(wish.effective, dayOf(state, acting.now), 'effective');
	if (refused) return refused;
	const event = schemeEvent(wish.limits, state.shop.schemes.length + 1, wish.effective);
	const newest = state.shop.schemes.at(-1);
	if (event.ok && newest?.contentHash === contentHash(wish.limits) && newest.effective === wish.effective)
		return refuse('unchanged');
	return event;
}

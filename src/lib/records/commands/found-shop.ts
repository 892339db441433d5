import { competencies, safety } from '$lib/learning';
import { accept, refuse, type Acting, type Decision } from '../decision';
import { localDay } from '../local-day';
import type { Json } from '../json';
import type { Role, TextRef } from '../shapes';
import type { State } from '../state';
import { schemeEvent } from './set-scheme';

export interface FoundShop {
	readonly name: TextRef;
	/** IANA name, such as `America/Chicago`; every day in the record is a day there. */
	readonly timeZone: string;
	readonly demo: boolean;
	/** Id of the first lead, who is also the actor. */
	readonly leadName: TextRef;
	readonly lang: 'en' | 'es';
	readonly scheme: Json;
}

const knowsTimeZone = (timeZone: string): boolean => {
	try {
		return localDay('2000-01-01T00:00:00.000Z', timeZone) !== '';
	} catch {
		return false;
	}
};

const FIRST_ROLES: Role[] = ['lead', 'supervisor', 'trainee'];

/** The first act of every journal. The actor becomes the founding lead. */
export function foundShop(state: State, wish: FoundShop, { actor, now }: Acting): Decision {
	if (state.shop.founded) return refuse('already-founded');
	if (!knowsTimeZone(wish.timeZone)) return refuse('unknown-time-zone', 'timeZone');
	const scheme = schemeEvent(wish.scheme, 1, localDay(now, wish.timeZone));
	if (!scheme.ok) return scheme;
	return accept(
		{
			event: 'shop.founded',
			data: { lead: actor, name: wish.name, timeZone: wish.timeZone, demo: wish.demo }
		},
		{
			event: 'person.added',
			data: { person: actor, name: wish.leadName, roles: FIRST_ROLES, lang: wish.lang }
		},
		{
			event: 'training.started',
			data: { person: actor, areas: [...competencies, safety].map(({ id }) => id), how: 'start-training' }
		},
		...scheme.events
	);
}

import { accept, type Acting, type Decision } from '../decision';
import type { Json } from '../json';
import type { TextRef } from '../shapes';
import { dayOf } from '../standing/calendar-day';
import type { State } from '../state';
import { ifBackdated, unlessRole } from './guards';

export interface SetShopValue {
	readonly value: string;
	/** Already found valid by whoever knows the value's unit and range. */
	readonly amount: Json;
	readonly from: string;
	readonly reason: TextRef | null;
}

/** A lead sets a number that the shop decides itself, from a day on. */
export function setShopValue(state: State, wish: SetShopValue, acting: Acting): Decision {
	const refused =
		unlessRole(state, acting, 'lead') ?? ifBackdated(wish.from, dayOf(state, acting.now), 'from');
	if (refused) return refused;
	const { value, amount, from, reason } = wish;
	return accept({ event: 'shop-value.set', data: { value, amount, from, reason } });
}

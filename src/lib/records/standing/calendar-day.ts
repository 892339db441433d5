import { localDay } from '../local-day';
import type { State } from '../state';

/** The shop's calendar day of a moment. Before the shop is founded there is no time zone but UTC. */
export const dayOf = (state: State, instant: string): string =>
	localDay(instant, state.shop.founded?.timeZone ?? 'UTC');

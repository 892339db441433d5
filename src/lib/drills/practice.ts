import { solve, type Plan, type Shop, type Station } from '$lib/engine';
import { LARGEST_SEED, seeded } from './random';
import { fieldsAt, stationsOf } from './stations';
import { makeTicket, type Ticket } from './ticket';
import type { Breadth } from './trap';

export type PracticeDrill = Ticket & { readonly plan: Plan; readonly stations: readonly Station[] };

const TRIES = 200;

/**
 * A ticket to practise on: the whole way, or one station of a job that gets that far. The same order gives the same
 * drill. Undefined where no ticket of the shop gets to the station.
 */
export function makePracticeDrill(order: {
	readonly seed: number;
	readonly breadth: Breadth;
	readonly shop: Shop;
	readonly station: Station | null;
}): PracticeDrill | undefined {
	const { seed, breadth, shop, station } = order;
	const random = seeded(seed);
	for (let tries = 0; tries < TRIES; tries += 1) {
		const ticket = makeTicket({ seed: random.integer(0, LARGEST_SEED), breadth, shop });
		if (!ticket) return undefined;
		const plan = solve(ticket.job, shop);
		if (station === null) return { ...ticket, plan, stations: stationsOf(plan) };
		if (stationsOf(plan).includes(station) && fieldsAt(plan, station).length)
			return { ...ticket, plan, stations: [station] };
	}
	return undefined;
}

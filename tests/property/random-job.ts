import { makeTicket, type Breadth } from '../../src/lib/drills/index';
import { LARGEST_SEED, type Random } from '../../src/lib/drills/random';
import { jobSchema, type Job, type Shop } from '../../src/lib/engine/index';
import { draw, redraw, type Schema } from './draw';

const JOB = jobSchema as unknown as Schema;
/** How rarely an entry of a ticket is drawn anew: from a ticket hardly to be known again to one nearly as issued. */
const RARELY = [4, 12, 40, 120] as const;
const TICKETS_PER_SHOP = 25;

/** Tickets as they are issued to be practised on; none where the shop can start no job at all. */
export const issued = (shop: Shop, random: Random): readonly Job[] =>
	Array.from({ length: TICKETS_PER_SHOP }, () =>
		makeTicket({
			seed: random.integer(0, LARGEST_SEED),
			breadth: random.integer(1, 3) as Breadth,
			shop
		})
	).flatMap((ticket) => (ticket ? [ticket.job] : []));

const inOrder = (film: Job['film']): Job['film'] =>
	film && film.min > film.max ? { ...film, min: film.max, max: film.min } : film;

/** What no number alone can say: the coating is one of the shop's, and a window is the right way round. */
const coherent = (job: Job, shop: Shop, random: Random): Job => ({
	...job,
	on: random.onceIn(4) ? job.on : shop.on,
	coating: shop.sheets[job.coating] ? job.coating : random.pick(Object.keys(shop.sheets)),
	film: inOrder(job.film)
});

/**
 * A job of the whole space the schema admits. Most of those drawn blindly are refused at once, so that three of four
 * start from an issued ticket, some of whose entries are drawn anew.
 */
export function randomJob(shop: Shop, tickets: readonly Job[], random: Random): Job {
	const blind = !tickets.length || random.onceIn(4);
	const drawn = blind ? draw(JOB, random) : redraw(JOB, random.pick(tickets), random.pick(RARELY), random);
	return coherent(drawn as Job, shop, random);
}

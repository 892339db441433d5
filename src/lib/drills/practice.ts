import { RULES, solve, STATIONS, type Plan, type Shop, type Station } from '$lib/engine';
import { DRILL_KINDS, type DrillKindId } from './kinds';
import type { DrillKind } from './kinds/kind';
import { LARGEST_SEED, seeded, type Random } from './random';
import { fieldsAt, stationsOf } from './stations';
import { makeTicket, type Ticket } from './ticket';
import type { Breadth } from './trap';

/** What is practised: the whole way, one station of a job that gets that far, or a short drill. */
export type PracticePart = 'whole' | Station | DrillKindId;

export const PRACTICE_PARTS: readonly PracticePart[] = [
	'whole',
	...STATIONS,
	...DRILL_KINDS.map(({ id }) => id)
];

/** The plan holds what is asked and no more. */
export type PracticeDrill = Ticket & { readonly plan: Plan; readonly stations: readonly Station[] };

const TRIES = 200;

const holds = (plan: Plan, kind: DrillKind) =>
	kind.needs.every((id) => plan.fields.some(({ field }) => field === id));

/** What is asked of this plan; undefined where the ticket does not suit. */
function asked(plan: Plan, part: PracticePart, kind: DrillKind | undefined) {
	if (kind) {
		if (plan.decision !== 'accept' || !holds(plan, kind)) return undefined;
		const short = { ...plan, fields: plan.fields.filter(({ field }) => kind.asks.includes(field)) };
		return { plan: short, stations: stationsOf(short) };
	}
	const stations = stationsOf(plan);
	if (part === 'whole') return { plan, stations };
	const station = stations.find((one) => one === part);
	return station && fieldsAt(plan, station).length ? { plan, stations: [station] } : undefined;
}

/** Every other ticket of a short drill is about one of its own rules, so that there is something to notice. */
function aboutOf(kind: DrillKind | undefined, random: Random): string | undefined {
	if (!kind || !random.onceIn(2)) return undefined;
	return random.pick(RULES.filter(({ field }) => kind.asks.includes(field))).id;
}

/**
 * A ticket to practise on. The same order gives the same drill. Undefined where no ticket of the shop gets to what is
 * practised.
 */
export function makePracticeDrill(order: {
	readonly seed: number;
	readonly breadth: Breadth;
	readonly shop: Shop;
	readonly part: PracticePart;
}): PracticeDrill | undefined {
	const { seed, breadth, shop, part } = order;
	const kind = DRILL_KINDS.find(({ id }) => id === part);
	const random = seeded(seed);
	for (let tries = 0; tries < TRIES; tries += 1) {
		const about = aboutOf(kind, random);
		const ticket = makeTicket({ seed: random.integer(0, LARGEST_SEED), breadth, shop, about });
		if (!ticket) return undefined;
		const drill = asked(solve(ticket.job, shop), part, kind);
		if (drill) return { ...ticket, ...drill };
	}
	return undefined;
}

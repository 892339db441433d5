import { RULES, solve, STATIONS, type Answers, type Plan, type Shop, type Station } from '$lib/engine';
import { DRILL_KINDS, type DrillKindId } from './kinds';
import type { DrillKind, DrillTicket, MadeDrill } from './kinds/kind';
import { ofPlan, suits } from './kinds/of-plan';
import { LARGEST_SEED, seeded, type Random } from './random';
import type { DrillStep } from './step';
import { stepsOf } from './steps';
import { makeTicket, type Ticket } from './ticket';
import type { Breadth } from './trap';

/** What is practised: the whole way, one station of a job that gets that far, or a short drill. */
export type PracticePart = 'whole' | Station | DrillKindId;

export const PRACTICE_PARTS: readonly PracticePart[] = [
	'whole',
	...STATIONS,
	...DRILL_KINDS.map(({ id }) => id)
];

/** The short drill of that name; undefined for a part of the whole ticket. */
export const drillKind = (part: PracticePart): DrillKind | undefined =>
	DRILL_KINDS.find(({ id }) => id === part);

/** The plan holds what is asked, page by page; a short drill may hold other questions than the ticket's own plan. */
export type PracticeDrill = Ticket & {
	readonly plan: Plan;
	readonly steps: readonly DrillStep[];
	/** What stands in the fields when the drill is issued. */
	readonly filled: Answers;
};

export type PracticeOrder = {
	readonly seed: number;
	readonly breadth: Breadth;
	readonly shop: Shop;
	readonly part: PracticePart;
};

const TRIES = 200;

function ofTicket(plan: Plan, part: PracticePart): MadeDrill | undefined {
	const steps = part === 'whole' ? stepsOf(plan) : stepsOf(plan).filter(({ station }) => station === part);
	return steps.length ? { fields: plan.fields, steps } : undefined;
}

/** What is asked on this ticket; undefined where it does not suit. */
function asked(ticket: DrillTicket, part: PracticePart, random: Random): MadeDrill | undefined {
	const kind = drillKind(part);
	if (!kind) return ofTicket(ticket.plan, part);
	if (ticket.plan.decision !== 'accept' || !suits(ticket.plan, kind)) return undefined;
	return kind.make ? kind.make(ticket, random) : ofPlan(kind, ticket);
}

/** Every other ticket of a short drill is about one of its own rules, so that there is something to notice. */
function aboutOf(part: PracticePart, random: Random): string | undefined {
	const kind = drillKind(part);
	if (!kind || !random.onceIn(2)) return undefined;
	const own = RULES.filter(({ field }) => kind.asks.includes(field));
	return own.length ? random.pick(own).id : undefined;
}

/**
 * A ticket to practise on. The same order gives the same drill. Undefined where no ticket of the shop gets to what is
 * practised.
 */
export function makePracticeDrill(order: PracticeOrder): PracticeDrill | undefined {
	const { breadth, shop, part } = order;
	const random = seeded(order.seed);
	for (let tries = 0; tries < TRIES; tries += 1) {
		const about = aboutOf(part, random);
		const ticket = makeTicket({ seed: random.integer(0, LARGEST_SEED), breadth, shop, about });
		if (!ticket) return undefined;
		const plan = solve(ticket.job, shop);
		const made = asked({ job: ticket.job, plan, shop }, part, random);
		if (!made) continue;
		const { fields, steps, filled = {} } = made;
		return { ...ticket, plan: { ...plan, fields }, steps, filled };
	}
	return undefined;
}

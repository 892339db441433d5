import { field, RULES, solve, type Competency, type FieldId, type Plan, type Shop } from '$lib/engine';
import { LARGEST_SEED, seeded, type Random } from './random';
import { makeTicket, type Conditions, type Ticket } from './ticket';
import type { Breadth } from './trap';

/** One unaided drill: the whole ticket, with only some fields left to fill in. */
export type ProvingDrill = Ticket & { readonly plan: Plan; readonly asked: readonly FieldId[] };

export type ProvingOrder = {
	readonly seed: number;
	readonly competency: Exclude<Competency, 'safety'>;
	readonly shop: Shop;
	/** Only tickets that hold one of these rules: for a refresher after an incident. */
	readonly rules?: readonly string[];
	/** The job the incident was on: every other drill meets its conditions again, the rest vary them. */
	readonly like?: Conditions;
};

const FEWEST = 3;
const MOST = 6;
const SAFETY_FIELDS = 2;
/** Rare rules need many tickets until one holds them; after that many the next rule is tried. */
const TRIES = 250;

/**
 * Draws the drill by blueprint: every rule of the competency is equally likely to be the one the ticket is about, so
 * that common rules do not crowd out rare ones. The same order gives the same drill. Undefined where no ticket of the
 * shop asks for any of them.
 */
export function makeProvingDrill({
	seed,
	competency,
	shop,
	rules,
	like
}: ProvingOrder): ProvingDrill | undefined {
	const random = seeded(seed);
	const own = RULES.filter(
		(rule) => rule.competency === competency || field(rule.field).competency === competency
	);
	const again = like && random.onceIn(2) ? like : undefined;
	const targets = rules ? own.filter(({ id }) => rules.includes(id)) : own;
	for (const target of random.some(targets, targets.length))
		for (let tries = 0; tries < TRIES; tries += 1) {
			const breadth = random.integer(1, 3) as Breadth;
			const about = random.onceIn(2) ? target.id : undefined;
			// conditions under which the rule never comes up are given up half way
			const conditions = tries < TRIES / 2 ? again : undefined;
			const ticket = makeTicket({
				seed: random.integer(0, LARGEST_SEED),
				breadth,
				shop,
				about,
				like: conditions
			});
			if (!ticket && !conditions) return undefined;
			if (!ticket) continue;
			const plan = solve(ticket.job, shop);
			const asked = ask(plan, competency, target.id, random);
			if (asked) return { ...ticket, plan, asked };
		}
	return undefined;
}

function ask(plan: Plan, competency: Competency, target: string, random: Random): FieldId[] | undefined {
	const about = plan.fields.find(({ demands }) => demands.some(({ rule }) => rule === target))?.field;
	if (!about) return undefined;
	const of = (one: Competency) =>
		plan.fields.map((planned) => planned.field).filter((id) => field(id).competency === one);
	const own = of(competency);
	if (own.length < FEWEST) return undefined;
	const others = random.some(
		own.filter((id) => id !== about),
		random.integer(FEWEST - 1, MOST - 1)
	);
	const safety = random.some(
		of('safety').filter((id) => id !== about),
		SAFETY_FIELDS
	);
	const asked = new Set([about, ...others, ...safety]);
	return plan.fields.map((planned) => planned.field).filter((id) => asked.has(id));
}

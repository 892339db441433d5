import { mayStart, solve, type DataSheet, type Job, type Shop, type SubstrateId } from '$lib/engine';
import { seeded, type Random } from './random';
import { TRAPS } from './traps';
import type { Breadth } from './trap';
import { soundDay } from './world/day';
import { soundPart } from './world/part';
import { CUSTOMERS, PART_SORTS } from './world/parts';

/** A random job and what has been woven into it. */
export type Ticket = { readonly job: Job; readonly traps: readonly string[] };

export type TicketOrder = {
	readonly seed: number;
	readonly breadth: Breadth;
	/** Sheets and shop values in force; its day is the ticket's day. */
	readonly shop: Shop;
	/** A rule whose traps come first, where one fits. */
	readonly about?: string | undefined;
	/** Conditions of an earlier job to meet again. */
	readonly like?: Conditions | undefined;
};

/** What is known of an earlier job: null or missing is what nobody wrote down. */
export type Conditions = {
	readonly material: SubstrateId | null;
	readonly coating: string | null;
	readonly weather: Readonly<Partial<Job['weather']>>;
};

const TRAPS_BY_BREADTH: Record<Breadth, readonly [number, number]> = { 1: [0, 1], 2: [1, 2], 3: [2, 4] };

function soundJob(random: Random, shop: Shop, sheet: DataSheet, material: SubstrateId): Job {
	const sort = random.pick(PART_SORTS.filter(({ materials }) => materials.includes(material)));
	return {
		ticket: `T-${random.between(1000, 9999, 1)}`,
		customer: random.pick(CUSTOMERS),
		on: shop.on,
		parts: [soundPart(sort, material, random)],
		coating: sheet.id,
		film: null,
		writtenCap: null,
		blastingAgreed: false,
		...soundDay(shop.on, sheet, random)
	};
}

/** A job that can be done as it stands: materials in random order, then coatings, until the engine accepts one. */
function startable(random: Random, shop: Shop, like?: Conditions): Job | undefined {
	const known = [...new Set(PART_SORTS.flatMap((sort) => sort.materials))];
	const materials = known.filter((one) => !like?.material || one === like.material);
	const sheets = Object.values(shop.sheets).filter(({ id }) => !like?.coating || id === like.coating);
	for (const material of random.some(materials, materials.length))
		for (const sheet of random.some(sheets, sheets.length)) {
			const job = soundJob(random, shop, sheet, material);
			if (mayStart(job, shop) && solve(job, shop).decision === 'accept') return job;
		}
	return undefined;
}

/**
 * Makes a realistic, consistent job with traps woven in. The same order gives the same ticket. Undefined where no
 * coating of the shop can be used on any part, or not under those conditions.
 */
export function makeTicket({ seed, breadth, shop, about, like }: TicketOrder): Ticket | undefined {
	const random = seeded(seed);
	const sound = startable(random, shop, like);
	if (!sound) return undefined;
	let job: Job = { ...sound, weather: { ...sound.weather, ...like?.weather } };
	const [fewest, most] = TRAPS_BY_BREADTH[breadth];
	const wanted = random.integer(fewest, most);
	const woven: string[] = [];
	const fitting = random.some(
		TRAPS.filter(({ from, rule }) => from <= breadth || rule === about),
		TRAPS.length
	);
	const inOrder = [
		...fitting.filter(({ rule }) => rule === about),
		...fitting.filter(({ rule }) => rule !== about)
	];
	for (const trap of inOrder) {
		if (woven.length >= (about ? Math.max(1, wanted) : wanted)) break;
		const next = trap.weave(job, random, shop);
		if (!next) continue;
		job = next;
		woven.push(trap.id);
	}
	return { job, traps: woven };
}

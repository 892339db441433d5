import { Memory } from 'lowdb';
import { defaultScheme } from '$lib/learning';
import * as records from '$lib/records';
import type { Acting, Decision, Json, Outcome, Refused, State, TextRef } from '$lib/records';

/** A text of the erasable store that nobody reads in these tests. */
export const words = (text: string): TextRef => ({ text, hash: 'a'.repeat(64), lang: 'en' });

export const reason = { ref: words('t-reason'), length: 40 };

export const noConflict = { trained: false, lineManager: false, relative: false, paidByResult: false };

export const requirements: records.Requirements = {
	lessonsOf: (area) => [`${area}/one`, `${area}/two`],
	holdsSafetySkill: (competency) => competency === 'curing'
};

type Command<Wish> = (state: State, wish: Wish, acting: Acting) => Decision;

const START = '2026-03-02T15:00:00.000Z';

/** A shop whose clock stands still unless moved: lead-1 founded it, sup-1 supervises, trn-1 learns. */
export async function testShop(limits: Json = defaultScheme as unknown as Json) {
	const adapter = new Memory<string[]>();
	let time = Date.parse(START);
	let counter = 0;
	const journal = await records.Journal.open(adapter, { clock: () => new Date(time), requirements });

	const shop = {
		journal,
		adapter,
		get state() {
			return journal.state;
		},
		get now() {
			return new Date(time).toISOString();
		},
		get today() {
			return records.dayOf(journal.state, shop.now);
		},
		id: (what: string) => `${what}-${(counter += 1)}`,
		pass(amount: { minutes?: number; hours?: number; days?: number }) {
			time += ((amount.days ?? 0) * 24 * 60 + (amount.hours ?? 0) * 60 + (amount.minutes ?? 0)) * 60_000;
		},
		/** Asks, without writing anything. */
		ask: <Wish>(command: Command<Wish>, wish: Wish, actor: string): Decision =>
			command(journal.state, wish, { actor, now: shop.now, requirements }),
		try: <Wish>(command: Command<Wish>, wish: Wish, actor: string): Promise<Outcome> =>
			journal.act((state, acting) => command(state, wish, acting), actor),
		async do<Wish>(command: Command<Wish>, wish: Wish, actor: string) {
			shop.pass({ minutes: 1 });
			const outcome = await shop.try(command, wish, actor);
			if (!outcome.ok) throw new Error(`refused: ${JSON.stringify(outcome.refusal)}`);
			return outcome.entries;
		}
	};

	await shop.do(
		records.foundShop,
		{
			name: words('t-shop'),
			timeZone: 'America/Denver',
			demo: true,
			leadName: words('t-lead-1'),
			lang: 'en',
			scheme: limits
		},
		'lead-1'
	);
	for (const [person, roles] of [
		['sup-1', ['supervisor', 'trainee']],
		['sup-2', ['supervisor', 'trainee']],
		['trn-1', ['trainee']],
		['trn-2', ['trainee']]
	] as const)
		await shop.do(
			records.addPerson,
			{ person, name: words(`t-${person}`), roles: [...roles], lang: 'es' },
			'lead-1'
		);
	return shop;
}

export type TestShop = Awaited<ReturnType<typeof testShop>>;

/** The code of a refusal, or the name of the first event where there was none. */
export const codeOf = (decision: Decision | Outcome): string =>
	decision.ok ? 'accepted' : (decision as Refused).refusal.code;

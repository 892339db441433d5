import { Low, type Adapter } from 'lowdb';
import { NOTHING_BEFORE } from './chain';
import { refuse, type Acting, type Decision, type Refused } from './decision';
import { checkDraft } from './check-draft';
import type { Entry } from './entry';
import type { JournalEvent } from './event';
import { refusalEvent, type LogRefusal } from './refusal-event';
import type { Requirements } from './requirements';
import { sealAct, type Head } from './seal-act';
import { applyEntry, startState, type State } from './state';
import { checkLine, type Fault } from './verify';

/** A clock this little behind the last entry is being steered, not set; the last entry's time is used. */
const STEERING_MS = 60_000;

/** What the journal cannot know by itself. */
export interface Surroundings {
	readonly clock: () => Date;
	readonly requirements: Requirements;
}

type Decide = (state: State, acting: Acting) => Decision;

export type Outcome = { readonly ok: true; readonly entries: readonly Entry[] } | Refused;

/**
 * The append-only record. Acts are decided and written one at a time, in the order they came;
 * an act is acknowledged when its entries are on disk, and until then nothing in memory shows it.
 */
export class Journal {
	readonly #low: Low<string[]>;
	readonly #clock: () => Date;
	readonly #requirements: Requirements;
	readonly #entries: Entry[] = [];
	readonly #state: State = startState();
	#fault: Fault | null = null;
	#queue: Promise<unknown> = Promise.resolve();

	private constructor(adapter: Adapter<string[]>, { clock, requirements }: Surroundings) {
		this.#low = new Low<string[]>(adapter, []);
		this.#clock = clock;
		this.#requirements = requirements;
	}

	/** Reads what is there. A line that does not belong makes the journal read-only: see `fault`. */
	static async open(adapter: Adapter<string[]>, surroundings: Surroundings): Promise<Journal> {
		const journal = new Journal(adapter, surroundings);
		await journal.#low.read();
		for (const [index, line] of journal.#low.data.entries()) {
			const check = checkLine(line, journal.#last);
			if (!check.ok) {
				journal.#fault = { line: index + 1, why: check.why, detail: check.detail };
				break;
			}
			journal.#keep(check.entry);
		}
		if (!journal.#fault && journal.#last && journal.#last.more > 0)
			journal.#fault = { line: journal.#entries.length, why: 'act-cut-short', detail: '' };
		return journal;
	}

	/** Everything the entries add up to. Owned by the journal: read it, never change it. */
	get state(): State {
		return this.#state;
	}

	get entries(): readonly Entry[] {
		return this.#entries;
	}

	/** Number of entries and hash of the last: what is printed on signed sheets. */
	get head(): Head {
		return { count: this.#entries.length, hash: this.#last?.hash ?? NOTHING_BEFORE };
	}

	/** The first line that does not belong, if any. Entries before it still count; no more are taken. */
	get fault(): Fault | null {
		return this.#fault;
	}

	/**
	 * Lets `decide` answer from the state as it is when its turn comes, then writes what it answered.
	 * @param log has a refusal entered too, as an event of its own
	 * @throws if the disk refuses; the journal is then as it was before
	 */
	act(decide: Decide, actor: string, log?: LogRefusal): Promise<Outcome> {
		const turn = this.#queue.then(() => this.#act(decide, actor, log));
		this.#queue = turn.catch(() => undefined);
		return turn;
	}

	async #act(decide: Decide, actor: string, log?: LogRefusal): Promise<Outcome> {
		if (this.#fault) return refuse('journal-broken', undefined, [String(this.#fault.line), this.#fault.why]);
		const { now, setBack } = this.#now();
		const decision = decide(this.#state, { actor, now, requirements: this.#requirements });
		if (!decision.ok) {
			if (log) await this.#append([...setBack, refusalEvent(decision, log)], actor, now);
			return decision;
		}
		if (decision.events.length === 0) return { ok: true, entries: [] };
		for (const draft of decision.events) {
			const malformed = checkDraft(draft);
			if (malformed) return malformed;
		}
		return { ok: true, entries: await this.#append([...setBack, ...decision.events], actor, now) };
	}

	async #append(events: readonly JournalEvent[], actor: string, at: string): Promise<readonly Entry[]> {
		const sealed = sealAct(events, { actor, at }, this.head);
		const kept = this.#low.data.length;
		this.#low.data.push(...sealed.map(({ line }) => line));
		try {
			await this.#low.write();
		} catch (error) {
			this.#low.data.length = kept;
			throw error;
		}
		for (const { entry } of sealed) this.#keep(entry);
		return sealed.map(({ entry }) => entry);
	}

	#keep(entry: Entry): void {
		this.#entries.push(entry);
		applyEntry(this.#state, entry);
	}

	get #last(): Entry | null {
		return this.#entries.at(-1) ?? null;
	}

	/** Time never runs backwards in the journal without saying so. */
	#now(): { now: string; setBack: JournalEvent[] } {
		const now = this.#clock().toISOString();
		const last = this.#last?.at ?? now;
		if (now >= last) return { now, setBack: [] };
		if (Date.parse(last) - Date.parse(now) <= STEERING_MS) return { now: last, setBack: [] };
		return { now, setBack: [{ event: 'clock.set-back', data: { from: last, to: now } }] };
	}
}

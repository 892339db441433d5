/** A piece of work on one job; undefined for a job it has nothing to do on. */
export type Timed = readonly ((() => unknown) | undefined)[];

const WARM_UP = 3;
/** So few plans stay in the processor's cache, as the one plan does that a person is being graded by. */
const BATCH = 10;
/** Each batch is gone through so often, the first time not counted: it only fetches the batch. */
const PASSES = 5;

const median = (numbers: number[]) => numbers.sort((a, b) => a - b)[Math.floor(numbers.length / 2)]!;

/**
 * Microseconds per job of each piece, the median over the rounds. The pieces take turns on every batch of jobs, so that
 * a machine that slows down for a while slows all of them.
 */
export async function inTurns<Id extends string>(
	pieces: Readonly<Record<Id, Timed>>,
	rounds: number
): Promise<Record<Id, number>> {
	const ids = Object.keys(pieces) as Id[];
	const took = new Map<Id, number[]>(ids.map((id) => [id, []]));
	const jobs = Math.max(...ids.map((id) => pieces[id].length));
	for (let round = -WARM_UP; round < rounds; round += 1) {
		const sums = new Map<Id, number>(ids.map((id) => [id, 0]));
		for (let start = 0; start < jobs; start += BATCH)
			for (const id of ids) {
				const batch = pieces[id].slice(start, start + BATCH).filter((run) => run !== undefined);
				let started = 0;
				for (let pass = 0; pass <= PASSES; pass += 1) {
					if (pass === 1) started = performance.now();
					for (const run of batch) {
						const result = run();
						if (result instanceof Promise) await result;
					}
				}
				sums.set(id, sums.get(id)! + performance.now() - started);
			}
		if (round < 0) continue;
		for (const id of ids) {
			const done = pieces[id].filter((run) => run !== undefined).length * PASSES;
			took.get(id)!.push((sums.get(id)! * 1e3) / done);
		}
	}
	return Object.fromEntries(ids.map((id) => [id, median(took.get(id)!)])) as Record<Id, number>;
}

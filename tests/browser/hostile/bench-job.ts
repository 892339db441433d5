import { EXAMPLE_JOBS, type Job } from '$lib/engine';
import { entriesOfJob } from '../../behaviour/server/bench-card/entries-of-job';

/** An ordinary job as somebody types it into the form of the bench card; no box is ticked. */
export function benchJob(coating: string, day: string): Record<string, string> {
	const steel = EXAMPLE_JOBS.find(({ id }) => id === 'steel-plates')!;
	const entries = entriesOfJob({ ...steel.on(day), ticket: 'T-4711', coating } as Job);
	return Object.fromEntries(
		Object.entries(entries).filter((entry): entry is [string, string] => typeof entry[1] === 'string')
	);
}

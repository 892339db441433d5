import type { PageLoad } from './$types';
import { fetched } from './fetched';

/** Steps can be dragged into order, and the gun is tried on a bench. */
export const csr = true;

/** What only some drills show, and what is shown only at the end, is fetched only there: a page stays light to load. */
export const load: PageLoad = async ({ data }) => ({
	...data,
	draws: await fetched(data.step, data.gun),
	Outcome: data.outcome ? (await import('./Outcome.svelte')).default : null
});

import { prose } from '$lib/lessons/blocks';
import type { PageLoad } from './$types';

/** Checks answer in place. */
export const csr = true;

export const load: PageLoad = async ({ data }) => ({
	...data,
	Prose: await prose(data.folder, data.view.lang)
});

import { prose } from '$lib/lessons/blocks';
import type { PageLoad } from './$types';

export const load: PageLoad = async ({ data }) => ({
	...data,
	Prose: await prose(data.folder, data.view.lang)
});

import { openBenchCard, workOut } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => openBenchCard(event);

export const actions: Actions = { default: workOut };

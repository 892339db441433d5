import { ruleList } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({ stations: ruleList(locals.lang) });

import { glossaryView } from '$lib/lessons';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => ({ letters: glossaryView(locals.lang) });

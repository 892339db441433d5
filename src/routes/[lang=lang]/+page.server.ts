import { redirect } from '@sveltejs/kit';
import type { PageServerLoad } from './$types';

/** Whoever works here begins with the day's sheet, an auditor with the record, everybody else at the door. */
export const load: PageServerLoad = ({ locals: { lang, who } }) => {
	if (!who) redirect(303, `/${lang}/sign-in`);
	redirect(303, `/${lang}/${who.roles.includes('auditor') ? 'record' : 'today'}`);
};

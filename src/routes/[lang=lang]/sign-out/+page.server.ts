import { redirect } from '@sveltejs/kit';
import { signOut } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => redirect(303, `/${locals.lang}/sign-in`);

export const actions: Actions = {
	default: (event) => {
		signOut(event);
		redirect(303, `/${event.locals.lang}/sign-in?why=out`);
	}
};

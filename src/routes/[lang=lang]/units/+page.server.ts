import { error, redirect } from '@sveltejs/kit';
import { shell } from '$lib/i18n';
import { chooseUnits, localPath, typed } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals }) => redirect(303, `/${locals.lang}`);

export const actions: Actions = {
	default: async (event) => {
		const { lang } = event.locals;
		const form = await event.request.formData();
		if (!chooseUnits(event, typed(form, 'units'))) error(400, shell[lang].noSuchUnits);
		redirect(303, localPath(typed(form, 'back'), event.url, `/${lang}`));
	}
};

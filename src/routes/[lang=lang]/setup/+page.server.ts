import { error, fail, redirect } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { readSetup, refused, setUp } from '$lib/server';
import type { Actions, PageServerLoad } from './$types';

export const load: PageServerLoad = ({ locals: { app, lang } }) => {
	if (app.journal.state.shop.founded) error(404, noPage[lang].problem[404].title);
	return { zone: new Intl.DateTimeFormat().resolvedOptions().timeZone };
};

export const actions: Actions = {
	default: async ({ request, locals: { app, lang }, getClientAddress }) => {
		if (app.journal.state.shop.founded) error(404, noPage[lang].problem[404].title);
		const { entries, problems, ok } = readSetup(await request.formData());
		const kept = { shop: entries.shop, zone: entries.zone, lead: entries.lead };
		if (!ok) return fail(400, { kept, problems });

		const result = await setUp(app, entries, { address: getClientAddress(), lang });
		if (result.ok) redirect(303, `/${lang}/sign-in?who=${result.lead}`);
		if ('refusal' in result) return refused(result);
		const { code } = result;
		return fail(code.reason === 'wait' ? 429 : 403, { kept, code });
	}
};

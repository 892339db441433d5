import { error, redirect } from '@sveltejs/kit';
import { noPage } from '$lib/i18n';
import { doneOf, enterShop, readerOf, setValue, shopToday, valuePage } from '$lib/server';
import type { RequestEvent } from '@sveltejs/kit';
import type { Actions, PageServerLoad } from './$types';

const pageOf = (event: RequestEvent & { params: { value: string } }) => {
	const { app, lang } = event.locals;
	const page = valuePage(app, event.params.value, readerOf(event));
	if (!page) error(404, noPage[lang].problem[404].title);
	if (page === 'gear') redirect(303, `/${lang}/shop/values/gear`);
	return page;
};

export const load: PageServerLoad = (event) => ({
	...enterShop(event),
	...pageOf(event),
	today: shopToday(event.locals.app),
	done: doneOf(event.url, ['set'])
});

export const actions: Actions = { default: (event) => setValue(event, pageOf(event).id) };

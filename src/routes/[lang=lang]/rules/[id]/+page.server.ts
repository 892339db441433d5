import { error } from '@sveltejs/kit';
import { RULES } from '$lib/engine';
import { noPage } from '$lib/i18n';
import { shopExamples } from '$lib/lessons';
import { readerOf, ruleView, shopInForce } from '$lib/server';
import type { PageServerLoad } from './$types';

export const load: PageServerLoad = (event) => {
	const { app, lang } = event.locals;
	const rule = RULES.find(({ id }) => id === event.params.id);
	if (!rule) error(404, noPage[lang].problem[404].title);
	return { rule: ruleView(rule, shopExamples(rule.id, shopInForce(app).shop), readerOf(event)) };
};

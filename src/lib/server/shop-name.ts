import type { Lang } from '$lib/i18n';
import type { App } from './app';
import { shownText } from './shown-text';

/** The shop's name as screens and papers show it; the program's own before there is a shop. */
export const shopName = (app: Pick<App, 'texts' | 'journal'>, lang: Lang): string => {
	const { founded } = app.journal.state.shop;
	return founded ? shownText(app, founded.name, lang) : 'Witness Panel';
};

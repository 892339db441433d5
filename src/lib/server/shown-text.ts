import { erasable, format, type Lang } from '$lib/i18n';
import type { TextRef } from '$lib/records';
import type { App } from './app';

/** A name or free text as a screen may show it: the words, or that and why they are not there. */
export const shownText = (app: Pick<App, 'texts'>, ref: TextRef, lang: Lang): string => {
	const found = app.texts.read(ref);
	switch (found.state) {
		case 'kept':
			return found.text;
		case 'erased':
			return erasable[lang].erased(format.date(found.on, lang));
		default:
			return erasable[lang][found.state];
	}
};

/** A person's name as a screen may show it. */
export const nameOf = (app: Pick<App, 'texts' | 'journal'>, person: string, lang: Lang): string => {
	const known = app.journal.state.people.get(person);
	return known ? shownText(app, known.name, lang) : erasable[lang].nobody;
};

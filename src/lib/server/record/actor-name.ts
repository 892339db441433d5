import { record, type Lang } from '$lib/i18n';
import type { App } from '../app';
import { nameOf } from '../shown-text';

/** Who an entry names: a person, or the program itself. */
export const actorName = (app: App, actor: string, lang: Lang): string =>
	actor === 'program' ? record[lang].program : nameOf(app, actor, lang);

import { FAMILIES } from '$lib/engine';
import { say, type Lang } from '$lib/i18n';
import type { App } from '../../app';
import { revisionInForce, sheetIn } from './revisions';

/** Every data sheet of the shop by title: the revision in force, and the newest where it is still to come. */
export const sheetList = (app: App, lang: Lang) =>
	[...app.journal.state.shop.sheets]
		.flatMap(([id, revisions]) => {
			const newest = revisions.at(-1);
			if (!newest) return [];
			const holds = revisionInForce(app, id);
			const { title, lang: titleLang, family, demo } = sheetIn(holds ?? newest);
			return [
				{
					id,
					title,
					titleLang,
					demo,
					family: `${family}: ${say(FAMILIES[family], lang)}`,
					inForce: holds ? { revision: holds.revision, from: holds.effective } : null,
					coming: newest === holds ? null : { revision: newest.revision, from: newest.effective }
				}
			];
		})
		.sort((a, b) => a.title.localeCompare(b.title, lang));

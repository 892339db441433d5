import { record, type Lang } from '$lib/i18n';
import { EVENTS, type EventKind } from '$lib/records';
import type { App } from '../app';
import { entryView } from './entry-view';

/** Entries on one page. */
const PAGE = 50;

const isKind = (kind: string): kind is EventKind => Object.hasOwn(EVENTS, kind);

/**
 * A page of the record, newest first.
 * @param wish as it stands in the address: an unknown kind or page means all kinds and the first page
 */
export function recordView(app: App, wish: { kind: string; page: string }, lang: Lang) {
	const { entries, head } = app.journal;
	const kinds: Readonly<Record<EventKind, string>> = record[lang].kind;
	const present = new Set(entries.map(({ event }) => event));
	const kind = isKind(wish.kind) ? wish.kind : null;
	const chosen = kind ? entries.filter(({ event }) => event === kind) : entries;
	const pages = Math.max(1, Math.ceil(chosen.length / PAGE));
	const asked = /^\d{1,6}$/.test(wish.page) ? Number(wish.page) : 1;
	const page = Math.min(Math.max(asked, 1), pages);
	const end = chosen.length - (page - 1) * PAGE;
	return {
		head,
		kind,
		kinds: (Object.keys(kinds) as EventKind[])
			.filter((one) => present.has(one))
			.map((id) => ({ id, label: kinds[id] })),
		count: chosen.length,
		page,
		pages,
		entries: chosen
			.slice(Math.max(0, end - PAGE), end)
			.toReversed()
			.map((entry) => entryView(app, entry, lang))
	};
}

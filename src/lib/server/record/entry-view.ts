import { record, type Lang } from '$lib/i18n';
import type { Entry, EventKind, JournalEvent } from '$lib/records';
import type { App } from '../app';
import { nameOf, shownText } from '../shown-text';
import { shopTime } from '../standing/shop-time';
import { actorName } from './actor-name';
import { isWithheld, shownEntry } from './shown-data';
import { TOLD, type Teller } from './told';

/** Enough of a hash to find the line by; the whole one stands in the raw entry. */
const PREFIX = 12;

// TypeScript cannot see that table and event go by the same key
const partsOf = ({ event, data }: JournalEvent, teller: Teller) =>
	(TOLD[event] as (data: unknown, teller: Teller) => ReturnType<(typeof TOLD)[EventKind]>)(data, teller);

/** One entry in words: what, about whom and what, by whom, when; and as it stands in the file. */
export function entryView(app: App, entry: Entry, lang: Lang) {
	const { state } = app.journal;
	const withheld = isWithheld(state, entry);
	const kinds: Readonly<Record<EventKind, string>> = record[lang].kind;
	const parts = partsOf(entry, {
		lang,
		name: (person) => nameOf(app, person, lang),
		text: (ref) => shownText(app, ref, lang),
		time: (instant) => shopTime(app, instant, lang),
		mayTell: !withheld
	});
	return {
		seq: entry.seq,
		kind: kinds[entry.event],
		told: parts.filter(Boolean).join(' · '),
		by: actorName(app, entry.actor, lang),
		at: shopTime(app, entry.at, lang),
		hash: entry.hash.slice(0, PREFIX),
		withheld,
		raw: JSON.stringify(shownEntry(state, entry, record[lang].withheldMark), null, 2)
	};
}

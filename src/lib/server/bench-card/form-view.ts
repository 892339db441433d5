import { METRIC, unitFor, UNITS, US, type Dimension, type Shop } from '$lib/engine';
import { benchCard, fields, say } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import { textIn, type Entries } from './entries';
import type { Fact } from './fact';
import { MOST_LINES, roomsFor, type Room } from './rooms';

type Problems = Readonly<Record<string, string>>;

/** Times are short or long, and the same in every system. */
const TIMES = ['min', 'h', 'd'];

/** Units a shop measures this in, the reader's own first. */
function unitNames(dimension: Dimension, about: number, { lang, units }: Reader): string[] {
	const ids =
		dimension === 'duration' ? TIMES : [units, METRIC, US].map((system) => unitFor(about, dimension, system));
	return [...new Set(ids)].flatMap((id) => {
		const unit = UNITS[dimension].find((one) => one.id === id);
		return unit && say(unit.label, lang) ? [say(unit.label, lang)] : [];
	});
}

function hintOf(fact: Fact, reader: Reader): string {
	const own = fact.hint ? [say(fact.hint, reader.lang)] : [];
	if (fact.kind !== 'quantity') return own.join(' ');
	const names = unitNames(fact.dimension, fact.about, reader);
	return [...(names.length ? [fields[reader.lang].units(names)] : []), ...own].join(' ');
}

function optionsOf(fact: Fact, { sheets }: Shop, { lang }: Reader): { id: string; label: string }[] {
	if (fact.kind === 'coating') return Object.values(sheets).map(({ id, title }) => ({ id, label: title }));
	if (fact.kind !== 'choice' && fact.kind !== 'choices') return [];
	return Object.entries(fact.options).map(([id, text]) => ({ id, label: say(text, lang) }));
}

/** How a fact is entered: a line to type, a day, boxes, or one of a list, short or long. */
const entryKind = (fact: Fact) => {
	if (fact.kind === 'coating') return 'choice' as const;
	return fact.kind === 'quantities' ? ('quantity' as const) : fact.kind;
};

function factView(
	name: string,
	fact: Fact,
	entries: Entries,
	problems: Problems,
	shop: Shop,
	reader: Reader
) {
	const hint = hintOf(fact, reader);
	return {
		id: name,
		name,
		label: say(fact.label, reader.lang),
		kind: entryKind(fact),
		text: textIn(entries, name),
		chosen: entries.values[name] ?? [],
		options: optionsOf(fact, shop, reader),
		...(hint ? { hint } : {}),
		...(problems[name] ? { error: problems[name] } : {})
	};
}

export type FactView = ReturnType<typeof factView>;

const nameOfRoom = ({ id, line }: Room, { lang }: Reader) => {
	const { room } = benchCard[lang];
	return id === 'part' ? room.part(line ?? 1) : room[id];
};

/** The form of a job as plain data: what is asked, what was entered, what has to be put right. */
export const jobFormView = (entries: Entries, problems: Problems, shop: Shop, reader: Reader) => ({
	lines: entries.lines,
	units: entries.units ?? '',
	mayAdd: entries.lines < MOST_LINES,
	mayDrop: entries.lines > 1,
	rooms: roomsFor(entries.lines).map((room) => ({
		id: room.line ? `${room.id}-${room.line}` : room.id,
		/** Whether it is the last of the part lines, below which one may be added or taken away. */
		lastLine: room.line === entries.lines,
		name: nameOfRoom(room, reader),
		hint: benchCard[reader.lang].roomHint[room.id],
		facts: Object.entries(room.facts).map(([name, fact]) =>
			factView(name, fact, entries, problems, shop, reader)
		)
	}))
});

export type JobFormView = ReturnType<typeof jobFormView>;

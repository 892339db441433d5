import {
	CUPS,
	FAMILIES,
	FAMILY_PARTS,
	HAZARDS,
	REQUIRED_LINES,
	SHEET_LINES,
	THINNERS,
	TWO_PART_LINES,
	UNITS,
	type Family,
	type LineId,
	type Text
} from '$lib/engine';
import { say, sheets, shopSheets, type Lang } from '$lib/i18n';
import { LINE_ROOMS, linesOf } from './line-rooms';
import { amountKeys, fieldOf, lineOf, NONE } from './sheet-fields';

const options = (table: Readonly<Record<string, Text>>, lang: Lang) =>
	Object.entries(table).map(([id, text]) => ({ id, label: say(text, lang) }));

const askedOf = (id: LineId): 'always' | 'two-part' | null => {
	if ((REQUIRED_LINES as readonly LineId[]).includes(id)) return 'always';
	return (TWO_PART_LINES as readonly LineId[]).includes(id) ? 'two-part' : null;
};

const lineForm = (id: LineId, lang: Lang) => ({
	id: lineOf(id),
	label: say(SHEET_LINES[id].label, lang),
	asked: askedOf(id),
	amounts: amountKeys(id).map((key) => ({ name: fieldOf(id, key), label: shopSheets[lang].amount[key] })),
	units: UNITS[SHEET_LINES[id].dimension].map(({ id: unit, label }) => ({
		id: unit,
		label: say(label, lang)
	})),
	unit: fieldOf(id, 'unit'),
	from: fieldOf(id, 'from'),
	read: fieldOf(id, 'read'),
	memory: fieldOf(id, 'memory')
});

export type LineForm = ReturnType<typeof lineForm>;

/** What the form of a data sheet asks and offers, in words; what was typed into it comes apart from it. */
export const sheetForm = (lang: Lang) => {
	const none = { id: NONE, label: sheets[lang].none };
	return {
		families: options(FAMILIES, lang).map(({ id, label }) => ({
			id,
			label: `${id}: ${label}`,
			parts: FAMILY_PARTS[id as Family]
		})),
		bases: [
			{ id: 'volume', label: sheets[lang].basisOf.volume },
			{ id: 'weight', label: sheets[lang].basisOf.weight },
			{ id: NONE, label: shopSheets[lang].oneParter }
		],
		thinners: [...options(THINNERS, lang), none],
		cups: [...options(CUPS, lang), none],
		hazards: options(HAZARDS, lang),
		rooms: LINE_ROOMS.map((room) => ({
			room,
			name: shopSheets[lang].room[room],
			lines: linesOf(room).map((id) => lineForm(id, lang))
		}))
	};
};

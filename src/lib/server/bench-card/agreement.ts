import {
	FEATURES,
	lineOn,
	REQUIRED_LINES,
	SHEET_LINES,
	TWO_PART_LINES,
	type DataSheet,
	type Feature,
	type IsoDate
} from '$lib/engine';
import { benchCard, format, say } from '$lib/i18n';
import type { Reader } from '$lib/paper';
import { textIn, type Entries } from './entries';
import { NO_HARDENER } from './facts/day';
import { AS_THE_SHEET } from './facts/ticket';

type Problems = Record<string, string>;

function filmProblems(entries: Entries, { lang }: Reader): Problems {
	const words = benchCard[lang].problem;
	const basis = textIn(entries, 'film.basis');
	if (!basis) return {};
	const wanted = basis !== AS_THE_SHEET;
	return Object.fromEntries(
		['film.min', 'film.max'].flatMap((name) => {
			const typed = Boolean(textIn(entries, name).trim());
			return typed === wanted ? [] : [[name, wanted ? words.empty : words.filmUnsaid]];
		})
	);
}

function maskProblems({ values, lines }: Entries, { lang }: Reader): Problems {
	const problems: Problems = {};
	for (let at = 0; at < lines; at += 1) {
		const has = values[`parts.${at}.features`] ?? [];
		const missing = (values[`parts.${at}.masked`] ?? []).filter((face) => !has.includes(face));
		if (missing.length > 0 && missing.every((face) => Object.hasOwn(FEATURES, face)))
			problems[`parts.${at}.masked`] = benchCard[lang].problem.maskedMissing(
				format.list(
					missing.map((face) => say(FEATURES[face as Feature], lang)),
					lang
				)
			);
	}
	return problems;
}

function hardenerProblems(entries: Entries, sheet: DataSheet | undefined, { lang }: Reader): Problems {
	if (!sheet) return {};
	const words = benchCard[lang].problem;
	const expires = Boolean(textIn(entries, 'shelf.hardenerExpires').trim());
	const state = textIn(entries, 'shelf.hardenerState');
	const twoPart = sheet.parts === 2;
	const problem = twoPart ? words.twoPart : words.onePart;
	return {
		...(expires === twoPart ? {} : { 'shelf.hardenerExpires': problem }),
		...(state && (state !== NO_HARDENER) !== twoPart ? { 'shelf.hardenerState': problem } : {})
	};
}

/** A sheet in force whose numbers begin on a later day is silent today. */
function sheetProblems(sheet: DataSheet | undefined, on: IsoDate, { lang }: Reader): Problems {
	if (!sheet) return {};
	const silent = [...REQUIRED_LINES, ...(sheet.parts === 2 ? TWO_PART_LINES : [])]
		.filter((line) => !lineOn(sheet, line, on))
		.map((line) => say(SHEET_LINES[line].label, lang));
	return silent.length ? { coating: benchCard[lang].problem.sheetSilent(format.list(silent, lang)) } : {};
}

/** What two entries say that cannot both be so, in words by field; each of them may be right by itself. */
export const disagreements = (
	entries: Entries,
	sheet: DataSheet | undefined,
	on: IsoDate,
	reader: Reader
): Problems => ({
	...sheetProblems(sheet, on, reader),
	...filmProblems(entries, reader),
	...maskProblems(entries, reader),
	...hardenerProblems(entries, sheet, reader)
});

import {
	FAMILY_PARTS,
	REQUIRED_LINES,
	startDays,
	TWO_PART_LINES,
	validateSheet,
	type DataSheet,
	type Family,
	type LineId,
	type SheetProblem
} from '$lib/engine';
import { format, say, shop, shopSheets, type Lang } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import { lineFromForm } from './line-from-form';
import { LINE_IDS } from './line-rooms';
import { fieldOf, lineOf, NONE, type AmountKey, type SheetEntries } from './sheet-fields';

type Lines = Partial<Record<LineId, readonly unknown[]>>;

const CHOICES = ['family', 'basis', 'thinner', 'cup', 'filled'] as const;

const orNull = (choice: string) => (choice === NONE ? null : choice);

/** The statements of the form that are not numbers. */
const headOf = (entries: SheetEntries, id: string, before: DataSheet | null, lang: Lang) => ({
	id,
	title: entries.title,
	lang: before && before.title === entries.title.trim() ? before.lang : lang,
	demo: before?.demo ?? false,
	family: entries.family,
	parts: FAMILY_PARTS[entries.family as Family],
	basis: orNull(entries.basis),
	thinner: orNull(entries.thinner),
	cup: orNull(entries.cup),
	rubSolvent: entries.rubSolvent.trim() || null,
	hazards: entries.hazards,
	filled: entries.filled === 'yes' ? true : entries.filled === 'no' ? false : undefined
});

/** The field of the form at which a problem of the sheet stands. */
function fieldAt(path: string, lines: Lines): string {
	const [head = '', line, index, key] = path.split('.');
	if (head !== 'lines') return head === 'parts' ? 'family' : head;
	const id = line as LineId | undefined;
	const revisions = id && lines[id];
	if (!id) return '';
	if (!revisions || key === undefined || Number(index) !== revisions.length - 1) return lineOf(id);
	return key === 'provenance' ? fieldOf(id, 'read') : fieldOf(id, key as AmountKey | 'unit' | 'from');
}

function effectiveProblem(effective: string, sheet: DataSheet | null, lang: Lang): string | null {
	if (!isIsoDate(effective)) return shop[lang].noDay;
	const first = sheet && startDays(sheet)[0];
	return first && effective < first ? shopSheets[lang].beforeFirst(format.date(first, lang)) : null;
}

/** The problems of a sheet, in words, by field of the form; the first one at a field is enough. */
const placed = (found: readonly SheetProblem[], lines: Lines, lang: Lang) => {
	const problems: Record<string, string> = {};
	for (const { path, text } of found) problems[fieldAt(path, lines)] ??= say(text, lang);
	return problems;
};

/** What was left open: a choice not made, a line no sheet of this family can do without. */
function missing(entries: SheetEntries, lines: Lines, lang: Lang): Record<string, string> {
	const needed: readonly LineId[] = [
		...REQUIRED_LINES,
		...(FAMILY_PARTS[entries.family as Family] === 2 ? TWO_PART_LINES : [])
	];
	return Object.fromEntries([
		...CHOICES.filter((name) => !entries[name]).map((name) => [name, shop[lang].choose]),
		...needed.filter((id) => !lines[id]).map((id) => [lineOf(id), shopSheets[lang].lineNeeded])
	]);
}

/**
 * Reads the form of a data sheet against the sheet it started from.
 * @param id the sheet's own
 */
export function sheetFromForm(
	entries: SheetEntries,
	id: string,
	before: DataSheet | null,
	lang: Lang
): { ok: true; sheet: DataSheet } | { ok: false; problems: Record<string, string> } {
	const lines: Lines = {};
	const unread: Record<string, string> = {};
	for (const line of LINE_IDS) {
		const read = lineFromForm(line, entries, before?.lines[line] ?? [], lang);
		if (!read) continue;
		lines[line] = read.revisions;
		Object.assign(unread, read.problems);
	}
	const checked = validateSheet({ ...headOf(entries, id, before, lang), lines });
	const effective = effectiveProblem(entries.effective, checked.ok ? checked.sheet : null, lang);
	const problems = {
		...(checked.ok ? {} : placed(checked.problems, lines, lang)),
		...missing(entries, lines, lang),
		...unread,
		...(entries.commonFrom && !isIsoDate(entries.commonFrom) ? { commonFrom: shop[lang].noDay } : {}),
		...(effective ? { effective } : {})
	};
	if (!checked.ok || Object.keys(problems).length > 0) return { ok: false, problems };
	return { ok: true, sheet: checked.sheet };
}

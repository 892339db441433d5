import { fail, redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { importSheet, startDays, type SheetProblem } from '$lib/engine';
import { format, say, shop, shopSheets, type Lang } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import { requireRole } from '../../guard';
import { typed } from '../../typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { revisionsOf } from './revisions';
import { enterSheet, sheetRefusal } from './save-sheet';

/** A form that was not taken, with every problem of the file at its path. */
export interface FileSentBack extends SentBack {
	readonly listed: readonly { readonly path: string; readonly text: string }[];
}

const listed = (kept: SentBack['kept'], problems: readonly SheetProblem[], lang: Lang) =>
	fail(400, {
		kept,
		problems: { text: shopSheets[lang].fileProblems },
		listed: problems.map(({ path, text }) => ({ path, text: say(text, lang) }))
	} satisfies FileSentBack);

/** The file that was chosen, or else the text that was pasted. */
async function fileText(form: FormData): Promise<string> {
	const file = form.get('file');
	return file instanceof File && file.size > 0 ? file.text() : typed(form, 'text');
}

/** Whether a file is the sheet it was sent as; a file by another id would become somebody else's revision. */
function idProblem(id: string, target: string, exists: boolean): SheetProblem[] {
	if (target && id !== target)
		return [
			{ path: 'id', text: { en: shopSheets.en.otherSheet(target), es: shopSheets.es.otherSheet(target) } }
		];
	if (!target && exists)
		return [{ path: 'id', text: { en: shopSheets.en.knownSheet, es: shopSheets.es.knownSheet } }];
	return [];
}

/** A lead enters a data sheet from a file in our format: a new sheet, or the next revision of the one named. */
export const importFile = async (
	event: RequestEvent
): Promise<ActionFailure<SentBack> | ActionFailure<FileSentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const form = await event.request.formData();
	const [target, basedOn, effective] = [
		typed(form, 'sheet'),
		typed(form, 'basedOn'),
		typed(form, 'effective')
	];
	const text = await fileText(form);
	const kept = { text, effective };
	if (!text.trim()) return sentBack(kept, { text: shopSheets[lang].noFile });
	if (!isIsoDate(effective)) return sentBack(kept, { effective: shop[lang].noDay });

	const read = importSheet(text);
	if (!read.ok) return listed(kept, read.problems, lang);
	const { sheet } = read;
	const misnamed = idProblem(sheet.id, target, revisionsOf(app, sheet.id).length > 0);
	if (misnamed.length > 0) return listed(kept, misnamed, lang);
	const first = startDays(sheet)[0];
	if (first && effective < first)
		return sentBack(kept, { effective: shopSheets[lang].beforeFirst(format.date(first, lang)) });

	const outcome = await enterSheet(event, sheet, { basedOn: target ? Number(basedOn) : 0, effective });
	if (!outcome.ok)
		return refusedAt(outcome, kept, { fields: ['effective'], lang, inWords: sheetRefusal(app, lang) });
	redirect(303, `/${lang}/shop/sheets/${sheet.id}?done=saved`);
};

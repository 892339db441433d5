import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import type { DataSheet } from '$lib/engine';
import { format, shop, shopSheets, type Lang } from '$lib/i18n';
import { saveSheet, type Json, type Refusal } from '$lib/records';
import type { App } from '../../app';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { today } from '../today';
import { freeId } from './free-id';
import { revisionsOf, sheetIn } from './revisions';
import { sheetEntries } from './sheet-fields';
import { sheetFromForm } from './sheet-from-form';

/** Words of this screen for what the record refuses of a sheet. */
export const sheetRefusal =
	(app: App, lang: Lang) =>
	({ code }: Refusal): string | null => {
		if (code === 'wrong-revision') return shopSheets[lang].changedMeanwhile;
		if (code === 'backdated') return shop[lang].past(format.date(today(app), lang));
		return code === 'malformed' ? shopSheets[lang].notPlain : null;
	};

/** Enters a sheet that was found valid as a revision of itself. */
export const enterSheet = (
	event: RequestEvent,
	sheet: DataSheet,
	{ basedOn, effective }: { basedOn: number; effective: string }
) => act(event, saveSheet, { sheet: sheet.id, basedOn, effective, content: sheet as unknown as Json });

/**
 * A lead saves the form of a data sheet: the next revision of a sheet, or a new one.
 * @param id of the sheet; null for a new one
 */
export const saveSheetForm = async (
	event: RequestEvent,
	id: string | null
): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const entries = sheetEntries(await event.request.formData());
	const newest = id === null ? undefined : revisionsOf(app, id).at(-1);
	const own = id ?? freeId(entries.title, app.journal.state.shop.sheets);
	const read = sheetFromForm(entries, own, newest ? sheetIn(newest) : null, lang);
	if (!read.ok) return sentBack(entries, read.problems);

	const basedOn = id === null ? 0 : Number(entries.basedOn);
	const outcome = await enterSheet(event, read.sheet, { basedOn, effective: entries.effective });
	if (!outcome.ok)
		return refusedAt(outcome, entries, { fields: ['effective'], lang, inWords: sheetRefusal(app, lang) });
	redirect(303, `/${lang}/shop/sheets/${own}?done=saved`);
};

import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { shopSheets } from '$lib/i18n';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { typed } from '../../typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { addDemoSheets } from './demo-sheets';

/** A lead of a shop without sheets begins with the invented ones. */
export const beginWithDemoSheets = async (event: RequestEvent): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { lang } = event.locals;
	if (typed(await event.request.formData(), 'add') !== 'demo')
		return sentBack({}, { '': shopSheets[lang].notAsked });
	const outcome = await act(event, addDemoSheets, null);
	if (!outcome.ok)
		return refusedAt(
			outcome,
			{},
			{
				fields: [],
				lang,
				inWords: ({ code }) => (code === 'id-taken' ? shopSheets[lang].hasSheets : null)
			}
		);
	redirect(303, `/${lang}/shop/sheets?done=demo`);
};

import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { settingProblems, type ShopValueId } from '$lib/engine';
import { say } from '$lib/i18n';
import { setShopValue, type Json } from '$lib/records';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { readerOf } from '../../reader';
import { shopInForce } from '../../shop-in-force';
import { withTexts } from '../../with-texts';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { decisionProblems, pastInWords } from './decision-entries';
import { amountFields, readAmount } from './value-form';

/** A lead sets one shop value from a day on, and is led back to it. */
export const setValue = async (event: RequestEvent, id: ShopValueId): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const kept = allTyped(await event.request.formData(), [...amountFields(id), 'from', 'reason']);
	const { from, reason } = kept;
	const problems = decisionProblems(kept, lang);

	const read = readAmount(id, kept, readerOf(event), shopInForce(app).shop);
	if (!read.ok) return sentBack(kept, { ...problems, ...read.problems });
	const { shop } = shopInForce(app, problems.from ? undefined : from);
	for (const { at, text } of settingProblems(id, read.amount, shop)) problems[at] = say(text, lang);
	if (Object.keys(problems).length > 0) return sentBack(kept, problems);

	const amount: Json = { from, ...read.amount };
	const outcome = await withTexts(app, { reason }, lang, (refs) =>
		act(event, setShopValue, { value: id, amount, from, reason: refs.reason })
	);
	if (!outcome.ok)
		return refusedAt(outcome, kept, { fields: ['from'], lang, inWords: pastInWords(app, lang) });
	redirect(303, `/${lang}/shop/values/${id}?done=set`);
};

import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { format, shop, shopScheme } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import {
	refuse,
	setScheme,
	type Acting,
	type Json,
	type Refusal,
	type SetScheme,
	type State
} from '$lib/records';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { today } from '../today';
import { SCHEME_FIELDS, schemeFromForm } from './scheme-form';

type Wish = SetScheme & {
	/** The newest version when the form was opened. */
	readonly basedOn: number;
};

/** As the record's own command, but nobody's version that came in between is overwritten unseen. */
const setSchemeUnlessChanged = (state: State, { basedOn, ...wish }: Wish, acting: Acting) =>
	state.shop.schemes.length === basedOn
		? setScheme(state, wish, acting)
		: refuse('wrong-revision', 'basedOn');

/** A lead enters a new version of the scheme, from a day on. */
export const changeScheme = async (event: RequestEvent): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const kept = allTyped(await event.request.formData(), [...SCHEME_FIELDS, 'effective', 'basedOn']);
	const effective = kept.effective!;
	const problems: Record<string, string> = isIsoDate(effective) ? {} : { effective: shop[lang].noDay };
	const read = schemeFromForm(kept, lang);
	if (!read.ok) return sentBack(kept, { ...problems, ...read.problems });
	if (Object.keys(problems).length > 0) return sentBack(kept, problems);

	const limits = read.scheme as unknown as Json;
	const wish = { limits, effective, basedOn: Number(kept.basedOn) };
	const outcome = await act(event, setSchemeUnlessChanged, wish);
	if (outcome.ok) redirect(303, `/${lang}/shop/scheme?done=set`);
	return refusedAt(outcome, kept, {
		fields: ['effective'],
		lang,
		inWords: ({ code }: Refusal) => {
			if (code === 'wrong-revision') return shopScheme[lang].changedMeanwhile;
			return code === 'backdated' ? shop[lang].past(format.date(today(app), lang)) : null;
		}
	});
};

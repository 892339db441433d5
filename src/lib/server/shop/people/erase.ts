import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { shopPeople } from '$lib/i18n';
import { forget } from '../../forget';
import { requireRole } from '../../guard';
import { typed } from '../../typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';

/** A lead erases a person, having ticked that they read what that means. */
export const eraseFromShop = async (
	event: RequestEvent,
	person: string
): Promise<ActionFailure<SentBack>> => {
	const lead = requireRole(event, 'lead');
	const { app, lang } = event.locals;
	if (typed(await event.request.formData(), 'understood') !== 'erase')
		return sentBack({}, { understood: shopPeople[lang].eraseConfirmMissing });
	const outcome = await forget(app, person, lead.id);
	if (!outcome.ok) return refusedAt(outcome, {}, { fields: [], lang });
	redirect(303, `/${lang}/shop/people?done=erased`);
};

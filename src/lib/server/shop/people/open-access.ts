import { redirect, type ActionFailure, type RequestEvent } from '@sveltejs/kit';
import { format, shop, shopPeople } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import { openAuditor, type Refusal } from '$lib/records';
import { act } from '../../act';
import { requireRole } from '../../guard';
import { localInstant } from '../../standing/local-instant';
import { allTyped } from '../all-typed';
import { refusedAt, sentBack, type SentBack } from '../sent-back';
import { today } from '../today';

const LAST_MINUTE_MS = 60_000 - 1;

/** The last moment of a day of the shop. */
const endOf = (day: string, timeZone: string): string | null => {
	const minute = localInstant(day, '23:59', timeZone);
	return minute && new Date(Date.parse(minute) + LAST_MINUTE_MS).toISOString();
};

/** A lead opens the record to an auditor until the end of a day. */
export const openAccess = async (event: RequestEvent, person: string): Promise<ActionFailure<SentBack>> => {
	requireRole(event, 'lead');
	const { app, lang } = event.locals;
	const { until } = allTyped(await event.request.formData(), ['until']);
	const kept = { at: 'access', until };
	const { timeZone } = app.journal.state.shop.founded ?? { timeZone: 'UTC' };
	const moment = isIsoDate(until) ? endOf(until, timeZone) : null;
	if (!moment) return sentBack(kept, { until: shop[lang].noDay });

	const outcome = await act(event, openAuditor, { person, until: moment });
	if (outcome.ok) redirect(303, `/${lang}/shop/people/${person}?done=opened`);
	return refusedAt(outcome, kept, {
		fields: ['until'],
		lang,
		inWords: ({ code, detail }: Refusal) => {
			if (code === 'backdated') return shop[lang].past(format.date(today(app), lang));
			const [why, days] = detail ?? [];
			return why === 'too-long' && days ? shopPeople[lang].untilTooLong(days) : null;
		}
	});
};

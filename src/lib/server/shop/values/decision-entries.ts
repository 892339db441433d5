import { format, shop, shopValues, type Lang } from '$lib/i18n';
import { isIsoDate } from '$lib/learning';
import type { Refusal } from '$lib/records';
import type { App } from '../../app';
import { today } from '../today';

const LONGEST_REASON = 500;

/** What is wrong with the first day and the reason of a decision, by field, in words. */
export const decisionProblems = (
	{ from, reason }: { from: string; reason: string },
	lang: Lang
): Record<string, string> => ({
	...(isIsoDate(from) ? {} : { from: shop[lang].noDay }),
	...(!reason.trim()
		? { reason: shopValues[lang].reasonMissing }
		: reason.length > LONGEST_REASON
			? { reason: shop[lang].tooLong(LONGEST_REASON) }
			: {})
});

/** A refusal of the day a decision starts, naming today. */
export const pastInWords =
	(app: App, lang: Lang) =>
	({ code }: Refusal): string | null =>
		code === 'backdated' ? shop[lang].past(format.date(today(app), lang)) : null;

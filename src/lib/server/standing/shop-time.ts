import { format, type Lang } from '$lib/i18n';
import type { App } from '../app';

/** A moment of the record as the shop's own clock and calendar showed it. */
export const shopTime = ({ journal }: Pick<App, 'journal'>, at: string, lang: Lang): string =>
	format.dateTime(at, lang, journal.state.shop.founded?.timeZone);

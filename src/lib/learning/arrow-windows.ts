import { addMonths, daysBetween, type IsoDate } from './calendar';
import type { WindowId } from './certification-arrows';
import type { Scheme } from './scheme';

type Limits = Pick<Scheme, 'continuity' | 'renewal'>;
type Window = (since: IsoDate, today: IsoDate, scheme: Limits) => boolean;

const lapseIsShort: Window = (since, today, { continuity }) =>
	daysBetween(since, today) <= continuity.lateDays;

const expiryIsRecent: Window = (since, today, { renewal }) =>
	today <= addMonths(since, renewal.recertifyWithinMonths);

/**
 * A confirmation missed by a few days needs evidence of work in between, a longer gap a short requalification; a
 * competency expired for long starts over with all its parts. `since` is the last good day.
 */
export const arrowWindows: Readonly<Record<WindowId, Window>> = {
	'lapse-short': lapseIsShort,
	'lapse-long': (...when) => !lapseIsShort(...when),
	'expiry-recent': expiryIsRecent,
	'expiry-old': (...when) => !expiryIsRecent(...when)
};

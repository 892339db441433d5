import { shopScheme, format, type Lang } from '$lib/i18n';
import type { SchemeLimit } from '$lib/learning';

const asShown = (value: number, unit: SchemeLimit['unit']): number =>
	// a share is set in percent; the rounding takes off what binary fractions add
	unit === 'share' ? Number((value * 100).toPrecision(10)) : value;

/** The number alone, as it is typed into the form. */
export const limitEntry = (value: number, unit: SchemeLimit['unit']): string => String(asShown(value, unit));

/** A limit of the scheme with its unit. */
export const limitText = (value: number, unit: SchemeLimit['unit'], lang: Lang): string =>
	shopScheme[lang].unit[unit](format.number(asShown(value, unit), lang), value);

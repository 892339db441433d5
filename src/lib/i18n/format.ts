import type { Lang } from './lang';

/** Regional forms: United States English and the Spanish of Latin America, where 4.5 keeps its decimal point. */
const LOCALE = { en: 'en-US', es: 'es-419' } as const satisfies Record<Lang, string>;

type Digits = { readonly atLeast?: number; readonly atMost?: number };

/**
 * Formatters for what people read. Each throws a RangeError for a value that is not a number or not a date: a blank
 * or "NaN" where a limit should stand is worse than a stopped page.
 */
export const format = {
	/** @param digits decimals to show; by default up to 2 */
	number(value: number, lang: Lang, { atLeast = 0, atMost = Math.max(atLeast, 2) }: Digits = {}): string {
		if (!Number.isFinite(value)) throw new RangeError(`Not a number to show: ${value}`);
		return new Intl.NumberFormat(LOCALE[lang], {
			minimumFractionDigits: atLeast,
			maximumFractionDigits: atMost
		}).format(value);
	},

	/**
	 * A day with its month in letters, so that 3/4 cannot be read as April 3 by one person and March 4 by another.
	 * @param at ISO 8601 text or a Date; a date without a time is that calendar day everywhere
	 * @param timeZone IANA name; by default the machine's own
	 */
	date(at: string | Date, lang: Lang, timeZone?: string): string {
		const dayOnly = typeof at === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(at);
		return new Intl.DateTimeFormat(LOCALE[lang], {
			dateStyle: 'medium',
			timeZone: dayOnly ? 'UTC' : timeZone
		}).format(new Date(at));
	},

	/** As `date`, with hours and minutes on the 24-hour clock. */
	dateTime(at: string | Date, lang: Lang, timeZone?: string): string {
		return new Intl.DateTimeFormat(LOCALE[lang], {
			year: 'numeric',
			month: 'short',
			day: 'numeric',
			hour: '2-digit',
			minute: '2-digit',
			hourCycle: 'h23',
			timeZone
		}).format(new Date(at));
	},

	/** The form that goes with a count. The count itself is not added. */
	plural(count: number, lang: Lang, forms: { readonly one: string; readonly other: string }): string {
		return new Intl.PluralRules(LOCALE[lang]).select(count) === 'one' ? forms.one : forms.other;
	},

	/** "a, b and c" */
	list(items: readonly string[], lang: Lang): string {
		return new Intl.ListFormat(LOCALE[lang], { type: 'conjunction' }).format(items);
	},

	/** "a, b or c" */
	either(items: readonly string[], lang: Lang): string {
		return new Intl.ListFormat(LOCALE[lang], { type: 'disjunction' }).format(items);
	}
};

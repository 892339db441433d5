/**
 * The calendar day (YYYY-MM-DD) on which a moment falls in a time zone.
 * @throws RangeError for a time zone the platform does not know
 */
export function localDay(instant: string, timeZone: string): string {
	const parts = new Intl.DateTimeFormat('en-CA', {
		timeZone,
		calendar: 'gregory',
		numberingSystem: 'latn',
		year: 'numeric',
		month: '2-digit',
		day: '2-digit'
	}).formatToParts(new Date(instant));
	const part = (type: string) => parts.find((each) => each.type === type)?.value ?? '';
	return `${part('year').padStart(4, '0')}-${part('month')}-${part('day')}`;
}

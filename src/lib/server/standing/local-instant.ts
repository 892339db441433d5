const MINUTE_MS = 60_000;

/** The wall clock of a zone at a moment, as if it were UTC. */
function wallClock(at: number, timeZone: string): number {
	const parts = new Intl.DateTimeFormat('en-US', {
		timeZone,
		hourCycle: 'h23',
		year: 'numeric',
		month: 'numeric',
		day: 'numeric',
		hour: 'numeric',
		minute: 'numeric'
	}).formatToParts(new Date(at));
	const part = (type: string) => Number(parts.find((each) => each.type === type)?.value);
	return Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'));
}

/**
 * The moment at which the clocks of a zone showed a day and a time. Of two, when clocks are set back, the first.
 * @param day YYYY-MM-DD, an existing one
 * @param time HH:MM on the 24-hour clock
 * @returns UTC as ISO 8601; null for what is no time, or one that was skipped when clocks were set forward
 */
export function localInstant(day: string, time: string, timeZone: string): string | null {
	const [, hour, minute] = /^(\d{1,2}):(\d{2})$/.exec(time) ?? [];
	if (hour === undefined || minute === undefined || Number(hour) > 23 || Number(minute) > 59) return null;
	const wanted = Date.parse(`${day}T00:00:00.000Z`) + (Number(hour) * 60 + Number(minute)) * MINUTE_MS;
	if (Number.isNaN(wanted)) return null;
	// zones are at most 14 hours off, and no two changes of the clock lie that close together
	const offsets = [-14, 14].map((hours) => {
		const near = wanted + hours * 60 * MINUTE_MS;
		return wallClock(near, timeZone) - near;
	});
	const moments = offsets.map((offset) => wanted - offset).sort((a, b) => a - b);
	const found = moments.find((at) => wallClock(at, timeZone) === wanted);
	return found === undefined ? null : new Date(found).toISOString();
}

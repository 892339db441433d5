/** A day as 'YYYY-MM-DD' in the calendar of the shop. Such texts compare in the order of the days. */
export type IsoDate = string;

const isLeap = (year: number) => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

const daysInMonth = (year: number, month: number) =>
	month === 2 ? (isLeap(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;

const pad = (value: number, width: number) => String(value).padStart(width, '0');

const write = (year: number, month: number, day: number): IsoDate =>
	`${pad(year, 4)}-${pad(month, 2)}-${pad(day, 2)}`;

export function isIsoDate(text: string): boolean {
	const [, year, month, day] = (/^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []).map(Number);
	if (!year || !month || !day) return false;
	return month <= 12 && day <= daysInMonth(year, month);
}

function read(date: IsoDate): readonly [number, number, number] {
	if (!isIsoDate(date)) throw new RangeError(`a day is written YYYY-MM-DD and exists, got '${date}'`);
	return [Number(date.slice(0, 4)), Number(date.slice(5, 7)), Number(date.slice(8, 10))];
}

/** Calendar months later; a day the month does not have becomes its last (31 August + 6 is the end of February). */
export function addMonths(date: IsoDate, months: number): IsoDate {
	const [year, month, day] = read(date);
	const total = year * 12 + (month - 1) + months;
	const [toYear, toMonth] = [Math.floor(total / 12), (total % 12) + 1];
	return write(toYear, toMonth, Math.min(day, daysInMonth(toYear, toMonth)));
}

/** Days later, 0 or more. */
export function addDays(date: IsoDate, days: number): IsoDate {
	const [year, month, start] = read(date);
	let day = start + days;
	let first = write(year, month, 1);
	for (let length = daysInMonth(year, month); day > length; length = daysInMonth(...monthOf(first))) {
		day -= length;
		first = addMonths(first, 1);
	}
	return write(...monthOf(first), day);
}

const monthOf = (date: IsoDate) => read(date).slice(0, 2) as [number, number];

function dayNumber(date: IsoDate): number {
	const [year, month, day] = read(date);
	const before = year - 1;
	let days = before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400);
	for (let earlier = 1; earlier < month; earlier += 1) days += daysInMonth(year, earlier);
	return days + day;
}

/** Days from the first day to the second, negative when the second comes first. */
export const daysBetween = (from: IsoDate, to: IsoDate): number => dayNumber(to) - dayNumber(from);

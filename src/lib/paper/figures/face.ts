/** Numbers a face is divided by, and the angles (degrees clockwise from the top) of its first and last one. */
export type Divided = {
	readonly from: number;
	readonly to: number;
	readonly numbered: number;
	readonly division: number;
	readonly sweep: readonly [first: number, last: number];
};

/** Binary dust would print as 0.6000000000000001. */
const tidy = (number: number) => Number(number.toFixed(6));

const stepped = (from: number, to: number, step: number) =>
	Array.from({ length: Math.floor(tidy((to - from) / step)) + 1 }, (_, at) => tidy(from + at * step));

const whole = (number: number) => tidy(number) === Math.round(number);

/** Where a number stands on the face. */
export const angleOf = (number: number, { from, to, sweep: [first, last] }: Divided) =>
	first + ((number - from) / (to - from)) * (last - first);

/** Numbered ticks are longest; where the middle between two numbers is a tick, it is longer than the rest. */
const rankOf = (number: number, { from, numbered }: Divided): 'number' | 'middle' | 'plain' =>
	whole((number - from) / numbered) ? 'number' : whole(((number - from) * 2) / numbered) ? 'middle' : 'plain';

/** Ticks and numbers of a face with its pointer. `text` writes a number; one it leaves empty is not printed. */
export const faceOf = (pointer: number, divided: Divided, text: (number: number) => string) => ({
	ticks: stepped(divided.from, divided.to, divided.division).map((number) => ({
		at: angleOf(number, divided),
		rank: rankOf(number, divided)
	})),
	numbers: stepped(divided.from, divided.to, divided.numbered)
		.map((number) => ({ at: angleOf(number, divided), text: text(number) }))
		.filter((one) => one.text),
	pointer: angleOf(pointer, divided)
});

/** The number on the face before a reading, and how many small divisions it is past that. */
export function pastNumber(reading: number, { from, numbered, division }: Divided) {
	const number = tidy(from + Math.floor(tidy((reading - from) / numbered)) * numbered);
	return { number, divisions: tidy((reading - number) / division) };
}

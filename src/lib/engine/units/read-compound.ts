import { unitNamed } from './named';
import { NUMBER, readNumber } from './read-number';
import { readUnit } from './read-unit';
import type { Reading, ReadingContext } from './reading';

const TERM = new RegExp(String.raw`(${NUMBER}) ?([^\d+/-]+)`, 'gy');
const LAST_MINUTES = /^(\d+ ?h(?:rs?|oras?|ours?)?) ?(\d{1,2})$/i;
const JOINT = /[ ,]*(?:\b(?:and|y)\b)?[ ,]*$/i;
const CLOCK = /^(\d{1,4}):([0-5]\d) ?([^\d]*)$/;

/**
 * One quantity in several units: `1 h 15 min`, `1h15`, `5 ft 6 in`, largest first. Undefined where the text is none,
 * so that the plain reading says what is wrong with it.
 */
export function readCompound(text: string, { dimension, lang }: ReadingContext): Reading | undefined {
	const whole = dimension === 'duration' ? text.replace(LAST_MINUTES, '$1 $2 min') : text;
	const terms = [...whole.matchAll(TERM)];
	if (terms.length < 2 || terms.map(([term]) => term).join('') !== whole) return undefined;

	let value = 0;
	let last = undefined;
	for (const [, number = '', spelling = ''] of terms) {
		const unit = unitNamed(dimension, spelling.replace(JOINT, ''));
		if (!unit || (last && unit.toSi(1) >= last.toSi(1))) return undefined;
		const amount = readNumber(number, lang);
		if (typeof amount !== 'number') return { code: amount };
		if (amount < 0) return { code: 'negative' };
		value += unit.toSi(amount);
		last = unit;
	}
	return last && { value, unit: last };
}

/** `1:30 h` is hours and minutes, `1:30 min` minutes and seconds; bare `1:30` could be either. */
export function readClock(text: string, context: ReadingContext): Reading | undefined {
	const [, large, small, spelling = ''] = CLOCK.exec(text) ?? [];
	if (large === undefined) return undefined;
	const unit = readUnit(spelling, context);
	if ('code' in unit) return unit;
	if (unit.id !== 'h' && unit.id !== 'min') return { code: 'not-a-number' };
	return { value: unit.toSi(Number(large) + Number(small) / 60), unit };
}

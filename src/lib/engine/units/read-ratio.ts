import { NUMBER, readNumber } from './read-number';
import type { Reading, ReadingContext } from './reading';
import { unitOf } from './units';

const PAIR = new RegExp(`^(${NUMBER}|\\d+)(?: ?[:/] ?| (?:to|a|por|in) )(${NUMBER}|\\d+)$`, 'i');

/** `9:1`, `9 to 1`, `9 a 1`, `4,5 : 1`, `9/1`: so many parts of the first to one of the second. */
export function readRatio(text: string, { lang, fallbackUnit }: ReadingContext): Reading {
	const unit = unitOf('ratio', ':1');
	const [, first, second] = PAIR.exec(text.replace(/(\d) ?\/ ?(\d)/g, '$1:$2')) ?? [];
	if (first === undefined || second === undefined) {
		const bare = new RegExp(`^${NUMBER}$`).test(text) ? readNumber(text, lang) : 'not-a-number';
		if (typeof bare !== 'number') return { code: bare };
		return fallbackUnit ? { value: bare, unit } : { code: 'missing-unit' };
	}
	const [parts, toOne] = [readNumber(first, lang), readNumber(second, lang)];
	if (typeof parts !== 'number') return { code: parts };
	if (typeof toOne !== 'number') return { code: toOne };
	if (parts < 0 || toOne < 0) return { code: 'negative' };
	return parts > 0 && toOne > 0 ? { value: parts / toOne, unit } : { code: 'not-a-number' };
}

import type { CardLine } from './line-view';

/**
 * Heights on Letter, the shorter sheet, in CSS pixels, as measured with the print style of the card at scale 1: what the
 * sheet holds between its margins; head, cautions and foot of an ordinary card; one more caution; the lines of a card
 * by the characters on them, to which their spacing adds.
 */
const SHEET = { height: 1003, besides: 215, caution: 20, spacing: 130, perCharacter: 0.0445 };

/** Room left for what was estimated too low. */
const SPARE = 0.99;

/** Smaller than this nobody reads it at a bench, and a long card goes on to a second sheet; larger looks empty. */
const LEAST = 0.88;
const MOST = 1.25;

const charactersOn = ({ label, set, window, bases }: CardLine): number =>
	[
		label,
		set,
		window,
		...bases.flatMap(({ rule, word, window: own, stated, sums }) => [
			rule.title,
			word,
			own,
			stated,
			...sums.flatMap(({ value, text }) => [value, text])
		])
	].join(' ').length;

/** How large the lines of a card are printed, so that they fill one sheet and stay on it. */
export function printScale(lines: readonly CardLine[], cautions: number): number {
	const characters = lines.reduce((sum, line) => sum + charactersOn(line), 0);
	const room = SHEET.height - SHEET.besides - SHEET.caution * cautions;
	const scale = SPARE * Math.sqrt(room / (SHEET.spacing + SHEET.perCharacter * characters));
	return Math.min(Math.max(scale, LEAST), MOST);
}

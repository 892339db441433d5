import type { Text } from '../text';

const VULGAR: Readonly<Record<string, string>> = {
	'½': '1/2',
	'⅓': '1/3',
	'⅔': '2/3',
	'¼': '1/4',
	'¾': '3/4',
	'⅛': '1/8',
	'⅜': '3/8',
	'⅝': '5/8',
	'⅞': '7/8'
};

/** Plain spaces, minus signs and fractions, so that one pattern reads what every keyboard types. */
export const plainTyping = (typed: string): string =>
	typed
		.replace(/[½⅓⅔¼¾⅛⅜⅝⅞]/g, (sign) => ` ${VULGAR[sign]}`)
		.replace(/[−–]/g, '-')
		.replace(/\s+/g, ' ')
		.trim();

/** One number at the start of a text: digits with separators, a fraction or a mixed number. */
export const NUMBER = String.raw`[+-]? ?(?:\d+ \d+ ?/ ?\d+|\d+ ?/ ?\d+|(?:\d{1,3}(?: \d{3})+(?!\d)|\d+)(?:[.,]\d+)*|[.,]\d+)`;

/**
 * Reads a typed number. A comma before exactly three digits could part thousands (1,200 = 1200) or decimals
 * (1,200 = 1.2), so it is refused unless another separator, a leading zero or a longer first group settles it. In
 * Spanish the same holds for a point, because half of the Spanish-speaking shops part thousands with it.
 */
export function readNumber(text: string, lang: keyof Text): number | 'ambiguous-number' | 'not-a-number' {
	const negative = text.startsWith('-');
	const size = readSize(text.replace(/^[+-] ?/, ''), lang);
	return typeof size === 'number' && negative ? -size : size;
}

function readSize(text: string, lang: keyof Text) {
	const parts = /^(?:(\d+) )?(\d+) ?\/ ?(\d+)$/.exec(text);
	if (parts) {
		const value = Number(parts[1] ?? 0) + Number(parts[2]) / Number(parts[3]);
		return Number.isFinite(value) ? value : 'not-a-number';
	}
	return readDecimal(text, lang);
}

function readDecimal(text: string, lang: keyof Text) {
	const grouped = text.includes(' ');
	const digits = text.replaceAll(' ', '');
	const separators = digits.replace(/\d/g, '');
	const last = separators.at(-1);
	if (!last) return Number(digits);

	const cut = digits.lastIndexOf(last);
	const whole = digits.slice(0, cut);
	const rest = digits.slice(cut + 1);
	if (separators.length === 1) {
		const threeDigits = /^[1-9]\d{0,2}$/.test(whole) && rest.length === 3 && !grouped;
		if (threeDigits && (last === ',' || lang === 'es')) return 'ambiguous-number';
		return Number(`${whole || '0'}.${rest}`);
	}

	const group = separators[0] as string;
	if (
		!grouped &&
		group !== last &&
		separators.indexOf(last) === separators.length - 1 &&
		inThousands(whole, group)
	)
		return Number(`${whole.replaceAll(group, '')}.${rest}`);
	if (!grouped && group === last && inThousands(digits, group)) return Number(digits.replaceAll(group, ''));
	return 'not-a-number';
}

const inThousands = (text: string, separator: string) => {
	const [first = '', ...groups] = text.split(separator);
	return /^[1-9]\d{0,2}$/.test(first) && groups.every((group) => /^\d{3}$/.test(group));
};

/**
 * What stays of a unit when the ways of typing it are taken away: case, accents, spaces, dots, carets, raised digits,
 * the two micro signs, and the ordinal sign typed for a degree.
 */
export const spellingKey = (text: string): string =>
	text
		.replace(/[º˚]/g, '°')
		.normalize('NFKC')
		.replace(/°/g, 'deg')
		.replace(/[′’‘´`]/g, "'")
		.replace(/''|[”“]/g, '"')
		.normalize('NFD')
		.replace(/\p{M}/gu, '')
		.toLowerCase()
		.replace(/μ/g, 'u')
		.replace(/[\s.^_-]/g, '');

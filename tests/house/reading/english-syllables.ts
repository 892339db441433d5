/** Endings that are written and not spoken: hole, holes, stopped; but table, gases, wanted, settled. */
const SILENT = /(?:(?<![^aeiouyl]l)e|(?<![td]|[^aeiouyl]l)ed|(?<![cgsxz]|[cs]h|[^aeiouyl]l)es)$/;

/** Vowels side by side that are spoken apart: material, various, radio, drying, client, science, area, react, fluid. */
const APART =
	/(?<![cgst])ia(?!n)|(?<![cgtx])iou|io(?=s?$)|(?<=[aeouy])ing|(?<![ct])ie(?=nt|t$)|(?<=sc)ie|(?<=..)ea(?=s?$)|(?<=^r)ea(?=ct)|(?<=cr)ea(?=t[ei])|(?<![gq])ui(?=[dn])/g;

/**
 * Syllables of an English word, by its spelling: groups of vowels, without endings that are not spoken. Near enough for
 * an average; no rule is right for every English word.
 */
export const englishSyllables = (word: string): number =>
	word
		.toLowerCase()
		.replace(/[’']\p{L}*/u, '')
		.split('-')
		.filter((part) => part.length > 0)
		.map((part) => {
			const spoken = part.length > 3 ? part.replace(SILENT, '') : part;
			const groups = spoken.match(/[aeiouy]+/g)?.length ?? 0;
			return Math.max(1, groups + (spoken.match(APART)?.length ?? 0));
		})
		.reduce((one, other) => one + other, 0);

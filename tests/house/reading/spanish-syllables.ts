const STRONG = /[aeoáéóíú]/;

/** Vowels within one group: a strong one beside a strong one, or a stressed weak one, begins a syllable of its own. */
function nuclei(group: string): number {
	const strong = [...group].filter((vowel) => STRONG.test(vowel)).length;
	return Math.max(1, strong);
}

/**
 * Syllables of a Spanish word. The spelling tells: two strong vowels (a, e, o) or a weak one with an accent (í, ú)
 * stand apart, a weak one (i, u, final y) leans on its neighbour; u is silent in que, qui, gue, gui.
 */
export function spanishSyllables(word: string): number {
	const groups = word
		.toLowerCase()
		.replace(/qu(?=[eiéí])|gu(?=[eiéí])/g, 'g')
		.replace(/y$/, 'i')
		.match(/[aeiouáéíóúü]+/g);
	return (groups ?? ['']).map(nuclei).reduce((one, other) => one + other, 0);
}

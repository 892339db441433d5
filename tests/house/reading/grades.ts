import type { Counted } from './counted';

const perSentence = ({ words, sentences }: Counted) => words / sentences;
const perWord = ({ syllables, words }: Counted) => syllables / words;

/**
 * School grade that an English text asks for, after Flesch and Kincaid:
 *   0.39 · words per sentence + 11.8 · syllables per word − 15.59
 * Read at en.copian.ca/library/research/readab/50.htm, which reports the Navy's study that it comes from.
 */
export const fleschKincaid = (text: Counted) => 0.39 * perSentence(text) + 11.8 * perWord(text) - 15.59;

/**
 * Ease of a Spanish text, after Fernández Huerta (1959), the easier the higher:
 *   206.84 − 0.60 · syllables per hundred words − 1.02 · words per sentence
 * Read at legible.es/blog/lecturabilidad-fernandez-huerta. The paper prints the last factor as sentences per hundred
 * words, which would make short sentences hard; taken as words per sentence, as Law argues (LINGUIST List 22.2332).
 */
export const fernandezHuerta = (text: Counted) =>
	206.84 - 0.6 * 100 * perWord(text) - 1.02 * perSentence(text);

/** Fernández Huerta's ease from which a text asks for no more than the eighth grade; table at legible.es, as above. */
export const EIGHTH_GRADE_EASE = 60;

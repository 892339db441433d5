import { describe, expect, test } from 'vitest';
import { LANGS } from '$lib/i18n';
import { spoken } from '../../src/lib/lessons/search/spoken';
import { filesUnder, textOf } from './files';
import { counted } from './reading/counted';
import { withEasyWords } from './reading/easy-words';
import { englishSyllables } from './reading/english-syllables';
import { EIGHTH_GRADE_EASE, fernandezHuerta, fleschKincaid } from './reading/grades';
import { spanishSyllables } from './reading/spanish-syllables';

/** Texts that ask for more than the eighth grade, each with the reason why they may. */
const HARDER: Readonly<Record<string, string>> = {};

/** Sentences of a lesson: headings and worked arithmetic are none. */
const sentencesOf = (markdown: string) =>
	spoken(markdown.replace(/^#{1,6} .*$/gm, '').replace(/<WorkedExample>[\s\S]*?<\/WorkedExample>/g, ''));

const folders = [...new Set(filesUnder('content').map((path) => path.split('/')[1]!))].toSorted();

const gradeOf = (text: string) => fleschKincaid(counted(text, englishSyllables));
const easeOf = (text: string) => fernandezHuerta(counted(text, spanishSyllables));

const read = folders.map((folder) => {
	const [en, es] = LANGS.map((lang) => sentencesOf(textOf(`content/${folder}/${lang}.md`))) as [
		string,
		string
	];
	return {
		...{ folder, en, es },
		grade: gradeOf(withEasyWords(en, 'en')),
		ease: easeOf(withEasyWords(es, 'es'))
	};
});
const short = (value: number) => Number(value.toFixed(1));

test('every lesson reads at the eighth grade or below, or is listed with its reason', () => {
	console.table(
		Object.fromEntries(
			read.map(({ folder, en, es, grade, ease }) => [
				folder,
				{
					'Flesch–Kincaid grade': short(grade),
					'terms counted as they are': short(gradeOf(en)),
					'Fernández Huerta ease': short(ease),
					'terms counted as they are, es': short(easeOf(es))
				}
			])
		)
	);
	const hard = read.flatMap(({ folder, grade, ease }) => [
		...(grade > 8 ? [`${folder}/en`] : []),
		...(ease < EIGHTH_GRADE_EASE ? [`${folder}/es`] : [])
	]);
	expect(hard).toEqual(Object.keys(HARDER));
});

test('a text written for lawyers is found hard', () => {
	expect(
		gradeOf(
			'Notwithstanding any contrary provision hereof, applicators shall demonstrate continuing qualification before undertaking unsupervised operations.'
		)
	).toBeGreaterThan(8);
	expect(
		easeOf(
			'No obstante cualquier disposición contraria, los aplicadores demostrarán la permanencia de su habilitación antes de emprender operaciones sin supervisión directa.'
		)
	).toBeLessThan(EIGHTH_GRADE_EASE);
});

describe('the grades', () => {
	// worked examples of the encyclopedia article on Flesch–Kincaid, the last two read as quoted elsewhere
	test.each([
		['one word of one syllable, the lowest there is', { sentences: 1, words: 1, syllables: 1 }, -3.4],
		[
			'a children’s book of 5.7 words a sentence, 1.02 syllables a word',
			{ sentences: 100, words: 570, syllables: 581.4 },
			-1.3
		],
		['the sentence of the platypus', { sentences: 1, words: 13, syllables: 24 }, 11.3]
	])('of English: %s', (_text, text, grade) => {
		expect(short(fleschKincaid(text))).toBe(grade);
	});

	// by hand from the constants of the formula: 206.84 − 0.60·200 − 1.02·10
	test('of Spanish: two hundred syllables in a hundred words, ten words a sentence', () => {
		expect(short(fernandezHuerta({ sentences: 10, words: 100, syllables: 200 }))).toBe(76.6);
	});
});

describe('syllables', () => {
	test('of the sentence worked in the encyclopedia article on Flesch–Kincaid', () => {
		const text = 'The Australian platypus is seemingly a hybrid of a mammal and reptilian creature.';
		expect(counted(text, englishSyllables)).toEqual({ sentences: 1, words: 13, syllables: 24 });
	});

	// as any dictionary parts them
	test.each([
		[1, 'film coats stopped sprayed holes clean heat shed need hooked blast through don’t'],
		[
			2,
			'water coating oven table settled called-off mixes panel hardened surface gases science drying fluid'
		],
		[3, 'hardener customer surfaces solvent-rub radio area various adhesion reaction'],
		[4, 'supervisor temperature humidity material']
	])('%i of each of these, in English', (count, words) => {
		expect(words.split(' ').filter((word) => englishSyllables(word) !== count)).toEqual([]);
	});

	test.each([
		[1, 'el pie buey que dos muy y gas'],
		[2, 'pieza capa agua quema guerra día aire presión ciudad ahí yeso'],
		[3, 'óxido humedad solvente oxidar diluye'],
		[4, 'película aéreo horneado aplicación recubierto'],
		[5, 'endurecedor evaporación recubrimiento']
	])('%i of each of these, in Spanish', (count, words) => {
		expect(words.split(' ').filter((word) => spanishSyllables(word) !== count)).toEqual([]);
	});
});

test('a term of the glossary counts as one easy word, in the plural as well', () => {
	expect(withEasyWords('Read the safety data sheets. Two thermocouples.', 'en')).toBe(
		'Read the thing. Two thing.'
	);
	expect(withEasyWords('Los puntos de rocío y el termopar.', 'es')).toBe('Los cosa y el cosa.');
	expect(withEasyWords('holding a runner', 'en')).toBe('holding a runner');
});

test('lines, stops and semicolons part sentences, numerals count one syllable', () => {
	const one = () => 1;
	expect(counted('Stop. Hold it; look!\nNo stop here\nAt 5.9 bar: done.', one)).toEqual({
		sentences: 5,
		words: 11,
		syllables: 11
	});
});

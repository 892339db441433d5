const ENGLISH = [
	'courses?',
	'modules?',
	'curricul(um|a)',
	'quiz(zes)?',
	'decks?',
	'flash ?cards?',
	'badges?',
	'high scores?',
	'scores?',
	'scored',
	'mastery',
	'streak',
	'level(l?ed)? up',
	'leaderboards?',
	'gradebooks?',
	'enroll?(ed|ment|s)?',
	'xp',
	'gamif\\w*'
];
const SPANISH = [
	'cursos?',
	'módulos?',
	'cuestionarios?',
	'mazos?',
	'insignias?',
	'puntuación',
	'puntuaciones',
	'calificación',
	'calificaciones',
	'rachas?',
	'matricular\\w*',
	'matrícula',
	'inscribir(se)?',
	'inscripción',
	'subir de nivel'
];

/**
 * Words that belong to course, question and game programs, and their Spanish forms; whole words, any case.
 * `streaks` in the plural is what badly stirred paint shows and stays allowed.
 */
export const BANNED = new RegExp(`(?<![\\p{L}-])(${[...ENGLISH, ...SPANISH].join('|')})(?![\\p{L}-])`, 'iu');

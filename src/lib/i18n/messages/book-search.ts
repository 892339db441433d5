import { format } from '../format';

const en = {
	title: 'Search',
	label: 'Search lessons, rules, defects and glossary',
	hint: 'One or more words. Accents, capitals and plurals do not matter.',
	go: 'Search',
	kind: { lesson: 'Lessons', rule: 'Rules', defect: 'Defects', term: 'Glossary' },
	found: (query: string) => `Found for “${query}”`,
	nothing: (query: string) =>
		`Nothing holds all the words of “${query}”. Try fewer words, or only the beginning of one.`,
	more: (count: number) =>
		`${count} more ${format.plural(count, 'en', { one: 'is', other: 'are' })} not shown. Add a word to narrow it down.`
};

const es = {
	title: 'Buscar',
	label: 'Buscar en lecciones, reglas, defectos y glosario',
	hint: 'Una o más palabras. No importan acentos, mayúsculas ni plurales.',
	go: 'Buscar',
	kind: { lesson: 'Lecciones', rule: 'Reglas', defect: 'Defectos', term: 'Glosario' },
	found: (query: string) => `Encontrado para «${query}»`,
	nothing: (query: string) =>
		`Nada tiene todas las palabras de «${query}». Pruebe con menos palabras, o solo con el principio de una.`,
	more: (count: number) => `Hay ${count} más sin mostrar. Agregue una palabra para afinar.`
} satisfies typeof en;

/** Words of the search over the book. */
export const bookSearch = { en, es };

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'named-thinner-only',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: { en: 'Only the thinner the sheet names', es: 'Solo el diluyente que indica la hoja' },
	why: {
		en: 'A thinner from another family can throw solids out, eat hardener or leave too fast.',
		es: 'Un diluyente de otra familia puede cortar la mezcla, consumir endurecedor o irse demasiado rápido.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'thinning#named-thinner-only',
	breaks: { wrong: ['soft-film', 'blushing', 'wrinkling', 'gel-bits'] },
	outcome: {
		en: 'Gel bits, blush, wrinkling or a film that stays soft.',
		es: 'Grumos de gel, velado, arrugas o una película que queda blanda.'
	},
	evidence: {
		en: 'Read the label of the thinner can and the line on the data sheet.',
		es: 'Lea la etiqueta del diluyente y la línea de la hoja técnica.'
	},
	field: 'thinner-kind',
	applies: () => true,
	expects: ({ sheet }) => ({ kind: 'one-of', options: [sheet.thinner ?? 'none'] })
} satisfies Rule;

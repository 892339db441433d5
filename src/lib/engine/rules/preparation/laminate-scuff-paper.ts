import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'laminate-scuff-paper',
	station: 'preparation',
	competency: 'preparation',
	skill: 'C5',
	title: { en: 'Laminates are scuffed with P320 to P400', es: 'Los laminados se lijan con P320 a P400' },
	why: {
		en: 'Coarse paper cuts the fibres; very fine paper polishes and leaves no key. Stop when the shine is gone and no fibre shows.',
		es: 'La lija gruesa corta fibras; la muy fina pule y no deja anclaje. Pare cuando se va el brillo y no asoma fibra.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blast-settings#laminate-scuff-paper',
	breaks: { wrong: ['print-through', 'flaking', 'pinholes'] },
	outcome: {
		en: 'Coarse: scratches and weave show through. Too fine: the film peels off the glossy resin.',
		es: 'Gruesa: se transparentan rayas y tejido. Muy fina: la película se despega de la resina brillante.'
	},
	evidence: {
		en: 'Look at the panel under raking light and check the paper left at the bench.',
		es: 'Mire el panel bajo luz rasante y revise la lija que quedó en el banco.'
	},
	field: 'scuff-grit',
	applies: (seen) => seen.class === 'laminate',
	expects: () => ({ kind: 'one-of', options: ['p320', 'p400'] })
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'recesses-first-show-face-last',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C10',
	title: {
		en: 'Recesses and edges first, show face last',
		es: 'Huecos y bordes primero, cara visible al final'
	},
	why: {
		en: 'Hard places take most passes and throw mist around. Done first, their mist falls on bare faces and the show face is laid last, whole and wet.',
		es: 'Los lugares difíciles piden más pasadas y lanzan niebla. Si van primero, su niebla cae en caras desnudas y la cara visible va al final, entera y húmeda.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'passes#recesses-first-show-face-last',
	breaks: { wrong: ['dry-spray', 'holiday', 'thin-edges'] },
	outcome: {
		en: 'Bare corners, thin edges, and dry mist on the face the customer sees.',
		es: 'Esquinas desnudas, bordes delgados y niebla seca en la cara visible.'
	},
	evidence: {
		en: 'Look at the show face in raking light for dry mist; measure recess and edge.',
		es: 'Mire la cara visible con luz rasante en busca de niebla seca; mida hueco y borde.'
	},
	field: 'spray-order',
	applies: () => true,
	expects: () => ({
		kind: 'order',
		before: [
			['edges', 'faces'],
			['recesses', 'faces'],
			['faces', 'show-face']
		]
	})
} satisfies Rule;

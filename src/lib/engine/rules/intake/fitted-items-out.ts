import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { askOr } from './dangers';

export default {
	id: 'fitted-items-out',
	station: 'intake',
	competency: 'intake',
	skill: 'C6',
	title: { en: 'Fitted items come out first', es: 'Lo que trae montado se saca primero' },
	why: {
		en: 'Grease bleeds out of a bearing, seals cook, magnets and bonded plastic let go. None of them takes cleaner and oven, and a mask does not keep either out.',
		es: 'La grasa sale del rodamiento, los sellos se cuecen, imanes y plástico pegado se sueltan. Nada de eso aguanta limpiador y horno, y la máscara no protege.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'taking-apart#fitted-items-out',
	breaks: { wrong: ['fisheyes', 'flaking', 'distorted-part'] },
	outcome: {
		en: 'Grease runs over the clean face and the fitted item is ruined.',
		es: 'La grasa corre sobre la cara limpia y lo montado se arruina.'
	},
	evidence: {
		en: 'Count the bag-and-tag list against the drawing.',
		es: 'Compare la lista de bolsas etiquetadas con el plano.'
	},
	field: 'decision',
	applies: ({ job }) => job.parts.some(({ fitted }) => fitted.length > 0),
	expects: (seen) => ({ kind: 'one-of', options: askOr(seen) })
} satisfies Rule;

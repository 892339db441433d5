import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { listedGear, wearsListed } from './listed-gear';

export default {
	id: 'gear-for-blasting',
	station: 'preparation',
	competency: 'safety',
	skill: 'C7',
	title: {
		en: 'Gear for blasting and blow-off, as the shop lists it',
		es: 'Equipo para granallar y sopletear, según la lista del taller'
	},
	why: {
		en: 'Grit bounces back when you blow off, and a cabinet is loud enough to cost hearing. The list is the least your employer’s hazard assessment asks; noise and dust readings may ask more.',
		es: 'Al sopletear rebota abrasivo y la cabina ensordece. La lista es lo mínimo de la evaluación de peligros del empleador; las mediciones de ruido y polvo pueden pedir más.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'blasting-safely#gear-for-blasting',
	breaks: {},
	outcome: {
		en: 'Grit in the eye, hearing lost for good.',
		es: 'Abrasivo en el ojo, oído perdido para siempre.'
	},
	evidence: {
		en: 'Ask what was worn at the cabinet and at the blow gun.',
		es: 'Pregunte qué se usó en la cabina y con la pistola de soplado.'
	},
	field: 'ppe-blast',
	applies: (seen) => listedGear(seen, 'blast').length > 0,
	expects: (seen) => wearsListed(seen, 'blast')
} satisfies Rule;

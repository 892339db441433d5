import type { Situation } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { has } from './hazards';
import { listedGear, wearsListed } from './listed-gear';

const task = (seen: Situation) => (has(seen, 'isocyanate') ? 'mix-isocyanate' : 'mix');

export default {
	id: 'gear-for-mixing',
	station: 'mixing',
	competency: 'safety',
	skill: 'C1',
	title: {
		en: 'Gear for mixing, as the shop lists it',
		es: 'Equipo para mezclar, según la lista del taller'
	},
	why: {
		en: 'Hardener splashes, and skin contact alone can sensitise for life. The list is the least your employer’s hazard assessment asks; glove type and more come from the SDS.',
		es: 'El endurecedor salpica, y tocarlo puede sensibilizar de por vida. La lista es lo mínimo de la evaluación de peligros del empleador; guantes y demás, según la HDS.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'hazards-and-labels#gear-for-mixing',
	breaks: {},
	outcome: {
		en: 'Hardener in the eye, or an allergy that ends work with these coatings.',
		es: 'Endurecedor en el ojo, o una alergia que impide este trabajo.'
	},
	evidence: {
		en: 'Ask what was worn at the mixing bench, and look for splashes on sleeves and gloves.',
		es: 'Pregunte qué se usó en el banco de mezcla y busque salpicaduras en mangas y guantes.'
	},
	field: 'ppe-mix',
	applies: (seen) => listedGear(seen, task(seen)).length > 0,
	expects: (seen) => wearsListed(seen, task(seen))
} satisfies Rule;

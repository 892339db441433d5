import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { listedGear, wearsListed } from './listed-gear';

export default {
	id: 'gear-for-degreasing',
	station: 'preparation',
	competency: 'safety',
	skill: 'C1',
	title: {
		en: 'Gear for degreasing, as the shop lists it',
		es: 'Equipo para desengrasar, según la lista del taller'
	},
	why: {
		en: 'Solvent and hot alkali splash, and take the fat out of skin. The list is the least your employer’s hazard assessment asks; glove type and anything more come from the SDS.',
		es: 'El solvente y el álcali caliente salpican y desengrasan la piel. La lista es lo mínimo de la evaluación de peligros del empleador; tipo de guante y lo demás, según la HDS.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'hazards-and-labels#gear-for-degreasing',
	breaks: {},
	outcome: {
		en: 'Splashed eyes, burned or cracked skin.',
		es: 'Ojos salpicados, piel quemada o agrietada.'
	},
	evidence: {
		en: 'Ask what was worn at the wash, and look at the gloves used.',
		es: 'Pregunte qué se usó en el lavado y mire los guantes usados.'
	},
	field: 'ppe-degrease',
	applies: (seen) => listedGear(seen, 'degrease').length > 0,
	expects: (seen) => wearsListed(seen, 'degrease')
} satisfies Rule;

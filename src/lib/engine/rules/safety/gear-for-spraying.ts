import type { Situation } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { has } from './hazards';
import { listedGear, wearsListed } from './listed-gear';

const task = (seen: Situation) => (has(seen, 'isocyanate') ? 'spray-isocyanate' : 'spray');

export default {
	id: 'gear-for-spraying',
	station: 'spraying',
	competency: 'safety',
	skill: 'C2',
	title: {
		en: 'Gear for spraying, as the shop lists it',
		es: 'Equipo para aplicar, según la lista del taller'
	},
	why: {
		en: 'Mist settles on bare skin and in the eyes. Beside breathing protection the list is the least your employer’s hazard assessment asks; the SDS may ask more.',
		es: 'Cae neblina en piel descubierta y ojos. La lista es lo mínimo de la evaluación de peligros del empleador, además de protección respiratoria; la HDS puede pedir más.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'breathing-protection#gear-for-spraying',
	breaks: {},
	outcome: {
		en: 'Skin and eyes take up solvent and hardener; some people become sensitised for life.',
		es: 'Piel y ojos absorben solvente y endurecedor; posible sensibilización de por vida.'
	},
	evidence: {
		en: 'Ask what was worn in the booth, and look for mist on wrists, neck and forehead.',
		es: 'Pregunte qué se usó en la cabina y busque neblina en muñecas, cuello y frente.'
	},
	field: 'ppe-spray',
	applies: (seen) => listedGear(seen, task(seen)).length > 0,
	expects: (seen) => wearsListed(seen, task(seen))
} satisfies Rule;

import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { gunNeeds } from './breathing';

export default {
	id: 'air-fed-for-isocyanate',
	station: 'spraying',
	competency: 'safety',
	skill: 'C2',
	title: {
		en: 'Isocyanate is sprayed with air-fed protection only',
		es: 'El isocianato se aplica solo con aire suministrado'
	},
	why: {
		en: 'A filter gives no warning when isocyanate gets through, and one exposure can leave asthma for life. Air from a tested breathing supply, or no spraying; the SDS may ask for more.',
		es: 'Un filtro no avisa cuando el isocianato lo pasa, y una exposición puede dejar asma de por vida. Aire respirable de suministro probado, o no se aplica; la HDS puede pedir más.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: cite('hse-isocyanate', 'air-fed protection for spraying; filter masks are not accepted', {
		read: 'stored pages'
	}),
	lesson: 'breathing-protection#air-fed-for-isocyanate',
	breaks: {},
	outcome: {
		en: 'Asthma that ends the applicator’s work with these coatings.',
		es: 'Asma que impide trabajar con estos recubrimientos.'
	},
	evidence: {
		en: 'Ask what was worn at the gun and see the last test of the breathing air.',
		es: 'Pregunte qué se usó con la pistola y vea la última prueba del aire respirable.'
	},
	field: 'spray-breathing',
	applies: (seen) => gunNeeds(seen) === 'air-fed',
	expects: () => ({ kind: 'one-of', options: ['air-fed'] })
} satisfies Rule;

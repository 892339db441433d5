import type { Situation } from '../../plan/situation';
import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { fitsThisPerson, gunNeeds } from './breathing';

function maySpray(seen: Situation) {
	const { wearer, bench } = seen.job;
	return wearer.medicalClearanceValid && fitsThisPerson(seen).some((one) => bench.breathing.includes(one));
}

export default {
	id: 'may-wear-it',
	station: 'spraying',
	competency: 'safety',
	skill: 'C2',
	title: {
		en: 'Nobody sprays in protection they may not wear',
		es: 'Nadie aplica con protección que no puede usar'
	},
	why: {
		en: 'Any respirator needs a valid medical clearance; a tight mask also a shaved face and a yearly fit test; a beard, a loose air-fed hood. With neither, somebody else sprays or nobody.',
		es: 'Todo respirador pide autorización médica vigente; la máscara ajustada, además cara afeitada y prueba de ajuste anual; la barba, capucha suelta con aire. Si no, aplica otra persona o nadie.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: cite('osha-1910-134', '(e), (f), (g)(1)(i)', {
		read: 'text of (g)(1)(i) and the agency’s answers on (e) and (f)'
	}),
	lesson: 'breathing-protection#may-wear-it',
	breaks: {},
	outcome: {
		en: 'The mask leaks, or wearing it harms the person.',
		es: 'La máscara fuga, o usarla daña a la persona.'
	},
	evidence: {
		en: 'See the clearance and fit-test dates, and who was at the gun.',
		es: 'Vea las fechas de autorización y de prueba de ajuste, y quién aplicó.'
	},
	field: 'wearer-action',
	applies: (seen) => gunNeeds(seen) !== undefined,
	expects(seen) {
		return { kind: 'one-of', options: [maySpray(seen) ? 'spray' : 'stop'] };
	}
} satisfies Rule;

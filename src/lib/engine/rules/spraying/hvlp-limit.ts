import { constant } from '../../plan/trace';
import { cite } from '../../sources/provenance';
import { bar } from '../../units/construct';
import type { Rule } from '../rule';

const LAW = cite('cfr-40-63', '63.11180, 0.1 to 10.0 psig at the air cap');

// The rule prints 10.0 psi; a gauge in bar shows the same pressure as 0.69 and cannot show it finer.
const LIMIT = constant('hvlp-limit', 'pressure', bar(0.69), LAW, {
	en: '10.0 psi, as a gauge shows it',
	es: '10.0 psi, como lo muestra un manómetro'
});

export default {
	id: 'hvlp-limit',
	station: 'spraying',
	competency: 'spraying',
	skill: 'C9',
	title: {
		en: 'An HVLP gun stays within 10 psi at the cap',
		es: 'Una pistola HVLP no pasa de 10 psi en la boquilla'
	},
	why: {
		en: 'Low pressure at the cap is what makes it an HVLP gun: less overspray and less solvent in the air. Above 10 psi it no longer counts as one.',
		es: 'La baja presión en la boquilla es lo que la hace HVLP: menos niebla y menos solvente en el aire. Por encima de 10 psi ya no cuenta como tal.'
	},
	severity: 'quality',
	authority: 'law',
	provenance: LAW,
	lesson: 'gun-set-up#hvlp-limit',
	breaks: { high: ['dry-spray', 'banding'] },
	outcome: {
		en: 'More overspray, a dry film, and a gun the air rules do not accept.',
		es: 'Más niebla, película seca y una pistola que las normas de aire no aceptan.'
	},
	evidence: {
		en: 'Read the test cap with the trigger pulled.',
		es: 'Lea la boquilla de prueba con el gatillo apretado.'
	},
	field: 'cap-pressure',
	applies: () => true,
	expects: () => ({ kind: 'at-most', max: LIMIT, amber: 0 })
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { fitsThisPerson, gunNeeds } from './breathing';

export default {
	id: 'breathing-for-solvent-mist',
	station: 'spraying',
	competency: 'safety',
	skill: 'C2',
	title: {
		en: 'Solvent mist needs vapour and mist protection that seals',
		es: 'La neblina de solvente pide protección para vapor y neblina que selle'
	},
	why: {
		en: 'Dust masks stop no vapour; tight masks nothing over a beard or without fit test. Organic-vapour and mist cartridges on a face they fit, or a loose air-fed hood; readings and SDS may ask more.',
		es: 'La mascarilla antipolvo no detiene vapor; la ajustada, nada sobre barba o sin prueba de ajuste. Cartuchos de vapor orgánico y neblina, o capucha suelta con aire; mediciones o HDS pueden pedir más.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: commonPractice,
	lesson: 'breathing-protection#breathing-for-solvent-mist',
	breaks: {},
	outcome: {
		en: 'Dizziness now, nerve damage in time.',
		es: 'Mareo hoy, nervios dañados después.'
	},
	evidence: {
		en: 'Ask what was worn, read the cartridges, and see the fit-test date.',
		es: 'Pregunte qué se usó, lea los cartuchos y vea la fecha de la prueba de ajuste.'
	},
	field: 'spray-breathing',
	applies: (seen) => gunNeeds(seen) === 'half-mask',
	expects(seen) {
		return { kind: 'one-of', options: fitsThisPerson(seen) };
	}
} satisfies Rule;

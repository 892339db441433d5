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
		en: 'A dust mask stops no vapour, and a tight mask stops nothing over a beard or untested. Cartridges for organic vapour and mist on a face they fit, or a loose air-fed hood; exposure readings and the SDS may ask for more.',
		es: 'Una mascarilla para polvo no detiene vapor, y una máscara ajustada no detiene nada sobre barba o sin prueba de ajuste. Cartuchos para vapor orgánico y neblina en una cara a la que ajusten, o capucha suelta con aire; las mediciones y la HDS pueden pedir más.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: commonPractice,
	lesson: 'safety-equipment#breathing-for-solvent-mist',
	breaks: {},
	outcome: {
		en: 'Solvent breathed at the gun: dizziness now, nerve damage in time.',
		es: 'Solvente respirado con la pistola: mareo hoy, daño a los nervios con el tiempo.'
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

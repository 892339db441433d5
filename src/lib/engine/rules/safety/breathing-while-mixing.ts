import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { gunNeeds } from './breathing';
import { has } from './hazards';

export default {
	id: 'breathing-while-mixing',
	station: 'mixing',
	competency: 'safety',
	skill: 'C2',
	title: { en: 'Breathing protection while mixing', es: 'Protección respiratoria al mezclar' },
	why: {
		en: 'A dust mask stops no vapour. Isocyanate hardener: at least vapour cartridges on a written change schedule; other solvent may go without where exhaust is proven. The SDS decides and may ask for air.',
		es: 'La mascarilla antipolvo no detiene vapor. Con isocianato, mínimo cartuchos de vapor con plan escrito de cambio; otro solvente, sin ellos con extracción comprobada. La HDS decide y puede pedir aire.'
	},
	severity: 'safety-stop',
	authority: 'safety-data-sheet',
	provenance: cite(
		'uscg-6260-30a',
		'mixing isocyanate coatings: half mask with organic-vapour and paint-mist cartridges at least',
		{
			read: 'stored text'
		}
	),
	lesson: 'breathing-protection#breathing-while-mixing',
	breaks: {},
	outcome: {
		en: 'Vapour breathed; with isocyanate, sensitised airways.',
		es: 'Vapor respirado; con isocianato, vías respiratorias sensibilizadas.'
	},
	evidence: {
		en: 'Ask what was worn at the bench, read the cartridges and the change dates.',
		es: 'Pregunte qué se usó en el banco, lea los cartuchos y las fechas de cambio.'
	},
	field: 'mix-breathing',
	applies: (seen) => gunNeeds(seen) !== undefined,
	expects(seen) {
		const asked = ['half-mask', 'air-fed'];
		return { kind: 'one-of', options: has(seen, 'isocyanate') ? asked : [...asked, 'none'] };
	}
} satisfies Rule;

import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'rags-in-metal-can',
	station: 'preparation',
	competency: 'safety',
	skill: 'C14',
	title: {
		en: 'Solvent rags go into a closed metal can',
		es: 'Los trapos con solvente van en bote metálico cerrado'
	},
	why: {
		en: 'Rags give off vapour that burns, and some residues heat themselves until they catch fire at night. A closed metal can, emptied every shift, holds both.',
		es: 'Los trapos sueltan vapor que arde, y algunos residuos se calientan solos hasta prender fuego de noche. Un bote metálico cerrado, vaciado cada turno, contiene ambas cosas.'
	},
	severity: 'safety-stop',
	authority: 'law',
	provenance: cite('osha-1910-107', '(g)(3)', {
		read: 'state twin: metal can at once, emptied daily or each shift'
	}),
	lesson: 'fire-and-booth#rags-in-metal-can',
	breaks: {},
	outcome: {
		en: 'Fire in the bin when nobody is there.',
		es: 'Fuego en el bote cuando no hay nadie.'
	},
	evidence: {
		en: 'Walk the benches and bins at the end of the shift.',
		es: 'Recorra bancos y botes al final del turno.'
	},
	field: 'rags',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['metal-can'] })
} satisfies Rule;

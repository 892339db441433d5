import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { hasSealedCavity } from './dangers';

export default {
	id: 'sealed-cavity-stops',
	station: 'intake',
	competency: 'intake',
	skill: 'C3',
	title: { en: 'A closed cavity does not go in the oven', es: 'Una cavidad cerrada no entra al horno' },
	why: {
		en: 'Cleaner creeps in through a pinhole and cannot get out. In the oven it boils: the part can burst and the vapour can catch fire.',
		es: 'El limpiador entra por un poro y no puede salir. En el horno hierve: la pieza puede reventar y el vapor puede prenderse.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite('hse-oven-explosion', 'a load wet with solvent exploded within ten minutes', {
		read: 'stored page'
	}),
	lesson: 'taking-apart#sealed-cavity-stops',
	breaks: { wrong: ['outgassing-blisters', 'solvent-pop'] },
	outcome: {
		en: 'Trapped solvent flashes in the hot oven.',
		es: 'El solvente atrapado se inflama en el horno caliente.'
	},
	evidence: {
		en: 'Weigh the part before and after cleaning, and look for a vent on the drawing.',
		es: 'Pese la pieza antes y después de limpiarla, y busque un respiradero en el plano.'
	},
	field: 'decision',
	applies: hasSealedCavity,
	expects: () => ({ kind: 'one-of', options: ['refuse', 'ask'] })
} satisfies Rule;

import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';
import { hasYellowPlating } from './dangers';

export default {
	id: 'yellow-plating-isolated',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Yellow-gold plating is set apart', es: 'El baño amarillo dorado se aparta' },
	why: {
		en: 'Shiny yellow plating may be cadmium or a chromate. Its dust is toxic, and a plated hard part may already be brittle from hydrogen.',
		es: 'Un baño amarillo brillante puede ser cadmio o cromato. Su polvo es tóxico, y una pieza dura con baño puede ya estar frágil por hidrógeno.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'materials#yellow-plating-isolated',
	breaks: { wrong: ['flaking', 'outgassing-blisters'] },
	outcome: {
		en: 'Toxic dust spreads through the shared cabinet.',
		es: 'Polvo tóxico se reparte por la cabina compartida.'
	},
	evidence: {
		en: 'Look at the receiving photo and at the plating note of the drawing.',
		es: 'Mire la foto de recepción y lo que dice el plano sobre el baño.'
	},
	field: 'decision',
	applies: hasYellowPlating,
	expects: () => ({ kind: 'one-of', options: ['ask', 'refuse'] })
} satisfies Rule;

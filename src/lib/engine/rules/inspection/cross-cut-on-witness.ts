import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'cross-cut-on-witness',
	station: 'inspection',
	competency: 'inspection',
	skill: 'C12',
	title: { en: 'Cut the witness panel, never the part', es: 'Se corta el panel testigo, nunca la pieza' },
	why: {
		en: 'A cross-cut goes down to the metal. On the customer’s part that is damage, unless the job says so in writing; the panel that went along tells the same.',
		es: 'El corte cruzado llega al metal. En la pieza del cliente eso es daño, salvo que el trabajo lo pida por escrito; el panel que la acompañó dice lo mismo.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'cure-and-adhesion#cross-cut-on-witness',
	breaks: { wrong: ['holiday'] },
	outcome: {
		en: 'A lattice of bare lines on a part that was good.',
		es: 'Una retícula de líneas desnudas en una pieza buena.'
	},
	evidence: {
		en: 'Look for six or eleven parallel cuts crossing at right angles on the part.',
		es: 'Busque en la pieza seis u once cortes paralelos cruzados en ángulo recto.'
	},
	field: 'adhesion-place',
	applies: () => true,
	expects: () => ({ kind: 'one-of', options: ['witness'] })
} satisfies Rule;

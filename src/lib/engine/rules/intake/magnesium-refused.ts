import { cite } from '../../sources/provenance';
import type { Rule } from '../rule';
import { hasBurningDust } from './dangers';

export default {
	id: 'magnesium-refused',
	station: 'intake',
	competency: 'intake',
	skill: 'C4',
	title: { en: 'Magnesium is not for this cabinet', es: 'El magnesio no entra en esta cabina' },
	why: {
		en: 'Magnesium dust burns and explodes, and wet dust gives off hydrogen. It needs a line of its own, never the shared blast cabinet.',
		es: 'El polvo de magnesio arde y explota, y mojado desprende hidrógeno. Necesita una línea propia, nunca la cabina compartida.'
	},
	severity: 'safety-stop',
	authority: 'shop',
	provenance: cite(
		'dguv-209-090',
		'§1.2 and §1.5: burning dust, hydrogen from wet dust',
		{ read: 'those paragraphs' },
		'handbook'
	),
	lesson: 'materials#magnesium-refused',
	breaks: {},
	outcome: {
		en: 'Dust in the cabinet or collector can catch fire.',
		es: 'El polvo en la cabina o el colector puede incendiarse.'
	},
	evidence: {
		en: 'Compare the material on the ticket with what went through the cabinet that day.',
		es: 'Compare el material de la orden con lo que pasó por la cabina ese día.'
	},
	field: 'decision',
	applies: hasBurningDust,
	expects: () => ({ kind: 'one-of', options: ['refuse', 'ask'] })
} satisfies Rule;

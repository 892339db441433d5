import { cureTemperature } from '../../plan/cure-window';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'probe-heaviest-and-thinnest',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'One probe on the heaviest section, one on the thinnest',
		es: 'Un termopar en la sección más pesada y otro en la más delgada'
	},
	why: {
		en: 'The heaviest section arrives last and says when the hold begins. The thinnest or most heat-limited spot arrives first and says when to stop. Rack wire and oven wall speak for neither.',
		es: 'La sección más pesada llega al final y dice cuándo empieza el tiempo. La zona más delgada o más limitada por calor llega primero y dice cuándo parar. El alambre y la pared no hablan por ninguna.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'curing#probe-heaviest-and-thinnest',
	breaks: {
		low: ['soft-film', 'over-cure', 'distorted-part', 'colour-shift'],
		high: ['soft-film', 'over-cure']
	},
	outcome: {
		en: 'The block comes out soft while the thin tab is already overbaked, and the chart shows neither.',
		es: 'El bloque sale blando mientras la pestaña delgada ya se pasó, y el registro no muestra ninguna de las dos.'
	},
	evidence: {
		en: 'Ask where the thermocouples sat, look for the traces they left, and rub a thick and a thin section.',
		es: 'Pregunte dónde estaban los termopares, busque sus marcas y frote una sección gruesa y una delgada.'
	},
	field: 'probe-places',
	applies: (seen) => cureTemperature(seen) !== undefined,
	expects: () => ({
		kind: 'all-of',
		options: ['heaviest', 'thinnest'],
		not: ['rack-wire', 'oven-wall']
	})
} satisfies Rule;

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
		en: 'The heaviest section arrives last and says when the hold begins; the thinnest or most heat-limited spot arrives first and says when to stop. Rack wire and oven wall tell neither.',
		es: 'La sección más pesada llega última y dice cuándo empezar a contar; la más delgada o limitada por calor llega primero y dice cuándo parar. Alambre y pared no dicen nada.'
	},
	severity: 'quality',
	authority: 'shop',
	provenance: commonPractice,
	lesson: 'loading-the-oven#probe-heaviest-and-thinnest',
	breaks: {
		low: ['soft-film', 'over-cure', 'distorted-part', 'colour-shift'],
		high: ['soft-film', 'over-cure']
	},
	outcome: {
		en: 'The block stays soft, the thin tab is overbaked.',
		es: 'El bloque queda blando, la pestaña delgada se pasa.'
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

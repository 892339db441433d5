import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'flash-time',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: { en: 'Flash off before the oven', es: 'Evaporar antes del horno' },
	why: {
		en: 'Solvent has to leave before the film skins over. In the oven the skin forms first and the solvent bursts through it.',
		es: 'El solvente debe salir antes de que la película haga piel. En el horno la piel se forma primero y el solvente la revienta.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'loading-the-oven#flash-time',
	breaks: { low: ['solvent-pop', 'pinholes', 'cold-run'], high: ['dirt', 'amine-bloom', 'gloss-off'] },
	outcome: {
		en: 'Too short: burst blisters in the thick areas. Too long: dust and moisture settle on the film.',
		es: 'Muy corta: ampollas reventadas en las zonas gruesas. Muy larga: polvo y humedad sobre la película.'
	},
	evidence: {
		en: 'Compare the times written on the ticket for last coat and oven door.',
		es: 'Compare las horas anotadas en la orden: última mano y puerta del horno.'
	},
	field: 'flash-time',
	applies: (seen) => sheetWindow(seen, 'flash') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'flash')!;
		return { kind: 'range', min, max, amber: min.value * 0.2 };
	}
} satisfies Rule;

import { sheetWindow } from '../../plan/situation';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'induction-kept',
	station: 'mixing',
	competency: 'mixing',
	skill: 'C8',
	title: {
		en: 'Wait as long as the sheet says after mixing',
		es: 'Esperar lo que indica la hoja tras mezclar'
	},
	why: {
		en: 'Some mixes must start to react in the cup before they are sprayed; others must not wait at all. Only the sheet knows.',
		es: 'Unas mezclas deben empezar a reaccionar en el vaso antes de aplicarse; otras no deben esperar. Solo la hoja lo sabe.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'pot-life#induction-kept',
	breaks: { low: ['fisheyes', 'amine-bloom', 'runs'], high: ['gel-bits'] },
	outcome: {
		en: 'Too short: craters and greasy bloom. Too long: pot life lost.',
		es: 'Muy corta: cráteres y exudación grasosa. Muy larga: se pierde vida de la mezcla.'
	},
	evidence: {
		en: 'Compare the time on the cup with the time of the first pass.',
		es: 'Compare la hora del vaso con la hora de la primera pasada.'
	},
	field: 'induction-time',
	applies: (seen) => sheetWindow(seen, 'induction') !== undefined,
	expects(seen) {
		const { min, max } = sheetWindow(seen, 'induction')!;
		return { kind: 'range', min, max, amber: 60 };
	}
} satisfies Rule;

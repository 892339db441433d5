import { cureHold } from '../../plan/cure-window';
import { commonPractice } from '../../sources/provenance';
import type { Rule } from '../rule';

export default {
	id: 'hold-time',
	station: 'curing',
	competency: 'curing',
	skill: 'C11',
	title: {
		en: 'Hold at part temperature as long as the sheet says',
		es: 'Mantener la temperatura de pieza lo que dice la hoja'
	},
	why: {
		en: 'Curing takes time at temperature. Cut it short and the film stays soft under a hard look; overrun it and the film goes brittle.',
		es: 'Curar toma tiempo a temperatura. Si se corta, la película queda blanda aunque se vea dura; si se pasa, se vuelve quebradiza.'
	},
	severity: 'quality',
	authority: 'data-sheet',
	provenance: commonPractice,
	lesson: 'soak#hold-time',
	breaks: { low: ['soft-film', 'gloss-off'], high: ['over-cure', 'colour-shift', 'gloss-off'] },
	outcome: {
		en: 'Too short: solvent softens the film. Too long: it darkens and chips at the edge of a cut.',
		es: 'Muy corto: el solvente ablanda la película. Muy largo: se oscurece y se astilla al borde de un corte.'
	},
	evidence: {
		en: 'On the oven chart count the minutes that the slowest part spent inside the window.',
		es: 'En el registro del horno cuente los minutos que la pieza más lenta pasó dentro de la ventana.'
	},
	field: 'cure-hold',
	applies: (seen) => cureHold(seen) !== undefined,
	expects(seen) {
		const { min, max } = cureHold(seen)!;
		return { kind: 'range', min, max, amber: min.value * 0.1 };
	}
} satisfies Rule;
